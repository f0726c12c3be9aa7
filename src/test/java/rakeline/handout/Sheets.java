package rakeline.handout;

import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rakeline.engine.Control;
import rakeline.engine.Outcome;
import rakeline.engine.Result;
import rakeline.engine.State;
import rakeline.figure.Figure;
import rakeline.figure.Samples;
import rakeline.worksheet.Row;
import rakeline.worksheet.Worksheet;

/** Pages that have run, for the handout's tests. */
final class Sheets {
    static final String HOSTILE = "</title><script>alert(1)</script> & \"q\" \u202eשלום مرحبا 你好 \u0001\uffff";
    static final Knowledge KNOWING = new Knowledge(
            word -> Optional.of(Samples.TRAIL).filter(quantity -> quantity.key().equals(word) || word.equals("TRAIL")),
            path -> List.of(path + ", usual values: toes down 0°."),
            key -> Optional.of(Samples.sideView())
                    .filter(drawing -> key.equals("trailMm"))
                    .map(Figure.class::cast));
    private static final Imprint IMPRINT = new Imprint(
            "1.2.3",
            ZonedDateTime.of(2026, 11, 25, 15, 4, 0, 0, ZoneOffset.UTC),
            List.of(Imprint.Source.of("page.rakeline", "content")));

    private Sheets() {}

    /** A page with a dial, a chart, a drawing, a table, words, a failed row and notes that name them. */
    static Sheet page(boolean code) {
        return page(PageSheet.Edition.STUDENTS, code);
    }

    /** The same for students or with answers. */
    static Sheet page(PageSheet.Edition edition, boolean code) {
        List<Row> rows = List.of(
                new Row.Note("n1", "# Trail\n\nMore offset, *less* trail: {{number|1}} mm.\n\n## Then\n\n- one\n- two"),
                Row.Snippet.of(
                        "r1", "double head = dial(HEAD_ANGLE, bike(\"demo-data/bikes/small.bike.json\"), 69, 74);"),
                Row.Snippet.of("r2", "Chart chart = chart(TRAIL);"),
                Row.Snippet.of("r3", "int q = 1 / 0;"),
                Row.Snippet.of("r4", "draw(it)"),
                Row.Snippet.of("r5", "measures(it)"),
                Row.Snippet.of("r6", "double number = 5;"),
                new Row.Note("n3", "The answer is five; {{nothing}}.").folded(true));
        Control dial = new Control.Dial("head", "Head angle", "", "°", 69, 74, 0.1, 71.3, 71.3, 70.5, 1);
        List<Outcome> outcomes = List.of(
                outcome("r1", "head", new Result.Value("70.5", 70.5, List.of()), List.of(dial)),
                shown("r2", "chart", Samples.sweep()),
                new Outcome("r3", "q", State.FAILED, "Line 1: / by zero.", "", Optional.empty(), List.of(), List.of()),
                shown("r4", "drawing", Samples.sideView()),
                shown("r5", "table", Samples.table(40)),
                outcome("r6", "number", new Result.Value("5", 5, List.of()), List.of()));
        return of("Trail", rows, outcomes, edition, code);
    }

    /** A page on which every word that someone could choose is hostile. */
    static Sheet hostile() {
        List<Row> rows = List.of(
                new Row.Note(
                        "n1",
                        "# " + HOSTILE + "\n\n<img src=\"http://example.invalid/x.png\" onerror=\"a()\"> "
                                + "[b](javascript:alert(1)) ![c](http://example.invalid/c.png)\n\n<div><p>unclosed"),
                Row.Snippet.of("r1", "\"text\""),
                Row.Snippet.of("r2", "int x;"),
                new Row.Note("n2", ">".repeat(500) + " deep " + "*a ".repeat(500) + "a* ".repeat(500)),
                new Row.Note("n3", ">".repeat(20) + " nested"));
        List<Outcome> outcomes = List.of(
                outcome("r1", HOSTILE, new Result.Text(HOSTILE + " ]]> \n" + HOSTILE), List.of()),
                new Outcome("r2", HOSTILE, State.FAILED, HOSTILE, HOSTILE, Optional.empty(), List.of(), List.of()));
        return of(HOSTILE, rows, outcomes, true);
    }

    /** A page of one note. */
    static Sheet note(String commonMark) {
        return of("Note", List.of(new Row.Note("n1", commonMark)), List.of(), false);
    }

    /** A page of a row that comes to a text, and one without a name that failed. */
    static Sheet text(String text) {
        List<Row> rows = List.of(Row.Snippet.of("r1", "text()"), Row.Snippet.of("r2", "1 / 0"));
        List<Outcome> outcomes = List.of(
                outcome("r1", "text", new Result.Text(text), List.of()),
                new Outcome("r2", "row 2", State.FAILED, "by zero", "", Optional.empty(), List.of(), List.of()));
        return of("Text", rows, outcomes, false);
    }

    /** A page of as many charts. */
    static Sheet charts(int count) {
        List<Row> rows = new ArrayList<>();
        List<Outcome> outcomes = new ArrayList<>();
        for (int i = 1; i <= count; i++) {
            rows.add(Row.Snippet.of("r" + i, "chart()"));
            outcomes.add(shown("r" + i, "chart " + i, Samples.sweep()));
        }
        return of("Charts", rows, outcomes, false);
    }

    private static Sheet of(String title, List<Row> rows, List<Outcome> outcomes, boolean code) {
        return of(title, rows, outcomes, PageSheet.Edition.STUDENTS, code);
    }

    static Sheet of(String title, List<Row> rows, List<Outcome> outcomes, PageSheet.Edition edition, boolean code) {
        Worksheet page = Worksheet.empty(title).withRows(rows).withAbout("About " + title);
        return PageSheet.of(new RunPage(page, outcomes), KNOWING, edition, code, IMPRINT);
    }

    static Outcome shown(String id, String name, Figure figure) {
        return outcome(id, name, new Result.Shown(figure), List.of());
    }

    private static Outcome outcome(String id, String name, Result result, List<Control> controls) {
        return new Outcome(
                id, name, State.FRESH, "", "", Optional.of(result), controls, List.of(), List.of(), Map.of());
    }
}
