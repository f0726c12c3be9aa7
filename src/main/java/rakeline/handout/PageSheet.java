package rakeline.handout;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
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
import rakeline.worksheet.Answer;
import rakeline.worksheet.Row;

/** A page that has run as a sheet: what its author wrote and what it came to, then what that rests on. */
public final class PageSheet {
    /** For whom a sheet is. */
    public enum Edition {
        /** Answers are left out, with lines to write one's own. */
        STUDENTS,
        /** Each answer stands where the page has it. */
        WITH_ANSWERS
    }

    private static final int LINES_TO_WRITE = 4;

    private final RunPage run;
    private final Map<String, Outcome> outcomes;
    private final Prose prose;
    private final Grounds grounds;
    private final boolean code;
    private final List<Block> blocks = new ArrayList<>();

    private PageSheet(RunPage whole, Knowledge knowledge, Edition edition, boolean code) {
        this.code = code;
        run = edition == Edition.STUDENTS ? whole.withoutAnswers() : whole;
        outcomes = run.byId();
        prose = Prose.of(whole.outcomes());
        grounds = new Grounds(run, knowledge);
    }

    /**
     * Lays out what stands on a page.
     *
     * @param code whether the code of its snippets is shown
     */
    public static Sheet of(RunPage run, Knowledge knowledge, Edition edition, boolean code, Imprint imprint) {
        PageSheet sheet = new PageSheet(run, knowledge, edition, code);
        List<Answer> answers = Answer.of(run.page());
        if (edition == Edition.STUDENTS && !answers.isEmpty()) {
            sheet.blocks.add(new Block.ToWrite("Name", 1));
        }
        sheet.gaps();
        sheet.controls();
        for (Row row : run.page().rows()) {
            answers.stream()
                    .filter(answer -> answer.beginsWith(row.id()))
                    .forEach(answer -> sheet.answer(answer, edition));
            if (!row.folded()) {
                sheet.row(row, sheet.blocks);
            }
        }
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
                    + (gaps.size() == 1 ? " has" : " have") + " no up-to-date result. " + String.join(" ", gaps)));
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

    private void answer(Answer answer, Edition edition) {
        if (edition == Edition.STUDENTS) {
            blocks.add(new Block.ToWrite("Your answer", LINES_TO_WRITE));
            return;
        }
        List<Block> place = new ArrayList<>();
        answer.rows().forEach(row -> row(row, place));
        blocks.add(new Block.Answered(place));
    }

    private void row(Row row, List<Block> place) {
        if (row instanceof Row.Note note) {
            note(note, place);
        } else {
            snippet(row, place);
        }
    }

    private void note(Row.Note note, List<Block> place) {
        Prose.Filled filled = prose.fill(note.text());
        place.add(new Block.Prose(filled.text(), run.page().title(), 1));
        filled.missing().forEach(sentence -> place.add(trouble(sentence)));
    }

    private void snippet(Row row, List<Block> place) {
        if (code) {
            place.add(new Block.Lines(row.text()));
        }
        Outcome outcome = outcomes.get(row.id());
        if (outcome == null) {
            place.add(trouble("A row of this page has not run."));
        } else {
            outcome(outcome, place);
        }
    }

    private void outcome(Outcome outcome, List<Block> place) {
        if (outcome.state() != State.FRESH || !outcome.message().isEmpty()) {
            place.add(trouble(RunPage.standing(outcome, outcome.message())));
        }
        if (!outcome.printed().isBlank()) {
            place.add(new Block.Lines(outcome.printed().stripTrailing()));
        }
        outcome.result()
                .filter(result -> !isControl(outcome))
                .ifPresent(result -> result(outcome.name(), result, place));
    }

    /** Where a dial stands is said above. */
    private static boolean isControl(Outcome outcome) {
        return outcome.controls().stream().anyMatch(control -> control.name().equals(outcome.name()));
    }

    private void result(String name, Result result, List<Block> place) {
        if (result instanceof Result.Shown shown) {
            place.add(new Block.Shown(shown.figure()));
        } else if (result instanceof Result.Text text) {
            place.add(text(name, text.text().stripTrailing()));
        } else if (result instanceof Result.Value value) {
            place.add(new Block.Named(name, value.said(name)));
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

    private void grounds() {
        blocks.add(new Block.Heading(2, "What the numbers rest on"));
        section("Held", grounds.held());
        section("Assumptions and usual values", grounds.assumptions());
        blocks.add(new Block.Heading(3, "Cautions"));
        blocks.add(new Block.Cautioned(Stream.concat(grounds.cautions().stream(), Sheet.STANDING_CAUTIONS.stream())
                .toList()));
        List<Quantity> quantities = grounds.quantities();
        if (!quantities.isEmpty()) {
            blocks.add(new Block.Heading(2, "What the words mean"));
            blocks.add(
                    new Block.Explained(quantities.stream().map(grounds::entry).toList()));
        }
    }

    private void section(String title, List<String> paragraphs) {
        if (!paragraphs.isEmpty()) {
            blocks.add(new Block.Heading(3, title));
            paragraphs.forEach(words -> blocks.add(new Block.Words(Block.Tone.PLAIN, words)));
        }
    }
}
