package rakeline.handout;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import rakeline.engine.Control;
import rakeline.engine.Outcome;
import rakeline.engine.Prose;
import rakeline.engine.Result;
import rakeline.engine.State;
import rakeline.figure.Column;
import rakeline.figure.Figure;
import rakeline.figure.Table;
import rakeline.quantity.Decimals;
import rakeline.quantity.Quantity;
import rakeline.worksheet.Row;

/** A page that has run as a sheet: what its author wrote and what it came to, then what that rests on. */
public final class PageSheet {
    private final RunPage run;
    private final Map<String, Outcome> outcomes;
    private final Prose prose;
    private final Grounds grounds;
    private final boolean code;
    private final List<Block> blocks = new ArrayList<>();
    private final List<Block> answers = new ArrayList<>();

    private PageSheet(RunPage run, Knowledge knowledge, boolean code) {
        this.run = run;
        this.code = code;
        outcomes = run.byId();
        prose = Prose.of(run.outcomes());
        grounds = new Grounds(run, knowledge);
    }

    /**
     * Lays out what stands on a page.
     *
     * @param code whether the code of its snippets is shown
     */
    public static Sheet of(RunPage run, Knowledge knowledge, boolean code, Imprint imprint) {
        PageSheet sheet = new PageSheet(run, knowledge, code);
        sheet.gaps();
        sheet.controls();
        run.page().rows().forEach(sheet::row);
        sheet.answers();
        sheet.grounds();
        return new Sheet(run.page().title(), run.page().about(), sheet.blocks, imprint.lines(), Sheet.Form.PAGES);
    }

    /** What a quantity means: definition, drawing, unit, range, uncertainty, limits, caution, source. */
    public static Block.Entry entry(Quantity quantity, Optional<Figure> drawing) {
        return Grounds.entry(quantity, drawing);
    }

    /** What is missing is said before anything else, and once more at its place. */
    private void gaps() {
        List<String> gaps = run.gaps();
        if (!gaps.isEmpty()) {
            blocks.add(trouble("This page is not whole: of " + outcomes.size() + " rows that compute, " + gaps.size()
                    + (gaps.size() == 1 ? " has" : " have") + " no result of now. " + String.join(" ", gaps)));
        }
    }

    private void controls() {
        List<Control> controls = run.controls();
        if (!controls.isEmpty()) {
            blocks.add(new Block.Shown(new Table("Where dials and pickers stood", columns(controls), "", List.of())));
        }
    }

    /** What they are called in the code is for those who see it. */
    private List<Column> columns(List<Control> controls) {
        List<Column> columns = new ArrayList<>(List.of(
                words("what", "What", controls, PageSheet::label),
                words("value", "Stood at", controls, PageSheet::value),
                words("range", "Of", controls, PageSheet::range)));
        if (code) {
            columns.add(words("name", "In the code", controls, Control::name));
        }
        return columns;
    }

    private static Column words(String key, String label, List<Control> controls, Function<Control, String> words) {
        return Column.ofWords(key, label, controls.stream().map(words).toList());
    }

    private static String label(Control control) {
        return control.label();
    }

    private static String value(Control control) {
        if (control instanceof Control.Dial dial) {
            return Decimals.shown(dial.value()) + unit(dial);
        }
        Control.Picker picker = (Control.Picker) control;
        int place = picker.paths().indexOf(picker.chosen());
        return place < 0 ? picker.chosen() : picker.labels().get(place) + " (" + picker.chosen() + ")";
    }

    private static String range(Control control) {
        if (control instanceof Control.Dial dial) {
            return Decimals.shown(dial.min()) + " to " + Decimals.shown(dial.max()) + unit(dial);
        }
        int choices = ((Control.Picker) control).paths().size();
        return choices == 1 ? "1 choice" : choices + " choices";
    }

    private static String unit(Control.Dial dial) {
        return dial.unit().isEmpty() || dial.unit().equals("°") ? dial.unit() : " " + dial.unit();
    }

    private void row(Row row) {
        if (row instanceof Row.Note note) {
            note(note);
        } else {
            snippet(row);
        }
    }

    private void note(Row.Note note) {
        Prose.Filled filled = prose.fill(note.text());
        List<Block> place = note.folded() ? answers : blocks;
        place.add(new Block.Prose(filled.text(), run.page().title(), 1));
        filled.missing().forEach(sentence -> place.add(trouble(sentence)));
    }

    private void snippet(Row row) {
        if (code) {
            blocks.add(new Block.Lines(row.text()));
        }
        Outcome outcome = outcomes.get(row.id());
        if (outcome == null) {
            blocks.add(trouble("A row of this page has not run."));
        } else {
            outcome(outcome, row.folded() ? answers : blocks);
        }
    }

    /** @param values where what is no figure goes */
    private void outcome(Outcome outcome, List<Block> values) {
        if (outcome.state() != State.FRESH || !outcome.message().isEmpty()) {
            blocks.add(trouble(RunPage.standing(outcome, outcome.message())));
        }
        if (!outcome.printed().isBlank()) {
            blocks.add(new Block.Lines(outcome.printed().stripTrailing()));
        }
        outcome.result()
                .filter(result -> !isControl(outcome))
                .ifPresent(result -> result(outcome.name(), result, values));
    }

    /** Where a dial stands is said above. */
    private static boolean isControl(Outcome outcome) {
        return outcome.controls().stream().anyMatch(control -> control.name().equals(outcome.name()));
    }

    private void result(String name, Result result, List<Block> values) {
        if (result instanceof Result.Shown shown) {
            blocks.add(new Block.Shown(shown.figure()));
        } else if (result instanceof Result.Text text) {
            values.add(text(name, text.text().stripTrailing()));
        } else if (result instanceof Result.Value value) {
            values.add(new Block.Named(name, value.said(name)));
        }
    }

    /** Lines that an author has set stay lines. */
    private Block text(String name, String text) {
        if (text.lines().count() > 1) {
            return new Block.Lines(text);
        }
        return code ? new Block.Named(name, text) : new Block.Words(Block.Tone.PLAIN, text);
    }

    private static Block trouble(String words) {
        return new Block.Words(Block.Tone.TROUBLE, words);
    }

    /** What is folded on the page comes after the rest of it: whoever is asked first shall not read the answer. */
    private void answers() {
        if (!answers.isEmpty()) {
            blocks.add(new Block.Heading(2, "Worked answers"));
            blocks.addAll(answers);
        }
    }

    private void grounds() {
        blocks.add(new Block.Heading(2, "What the numbers rest on"));
        section("Held", grounds.held(), Block.Tone.PLAIN);
        section("Assumptions and usual values", grounds.assumptions(), Block.Tone.PLAIN);
        List<String> cautions = new ArrayList<>(grounds.cautions());
        cautions.addAll(Sheet.STANDING_CAUTIONS);
        section("Cautions", cautions, Block.Tone.CAUTION);
        List<Quantity> quantities = grounds.quantities();
        if (!quantities.isEmpty()) {
            blocks.add(new Block.Heading(2, "What the words mean"));
            blocks.add(
                    new Block.Explained(quantities.stream().map(grounds::entry).toList()));
        }
    }

    private void section(String title, List<String> paragraphs, Block.Tone tone) {
        if (!paragraphs.isEmpty()) {
            blocks.add(new Block.Heading(3, title));
            paragraphs.forEach(words -> blocks.add(new Block.Words(tone, words)));
        }
    }
}
