package rakeline.command;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rakeline.desk.Places;
import rakeline.desk.SafeFile;
import rakeline.engine.Outcome;
import rakeline.engine.Prose;
import rakeline.engine.Result;
import rakeline.engine.Session;
import rakeline.engine.State;
import rakeline.engine.jshell.Sessions;
import rakeline.figure.CautionsSaid;
import rakeline.figure.Chart;
import rakeline.figure.Csv;
import rakeline.figure.Figure;
import rakeline.figure.MapFigure;
import rakeline.figure.TextTable;
import rakeline.figure.paint.Palette;
import rakeline.figure.paint.Svg;
import rakeline.handout.Imprint;
import rakeline.quantity.Decimals;
import rakeline.quantity.Refusal;
import rakeline.worksheet.Row;
import rakeline.worksheet.Worksheet;

/** Runs pages top to bottom, waiting rows too, and shows what they produced. */
final class PageRunner {
    private static final int SVG_WIDTH = 800;
    private static final int STEPS_PRINTED = 21;

    private final Console console;
    private final Session.Settings settings;

    PageRunner(Console console, Session.Settings settings) {
        this.console = console;
        this.settings = settings.withoutStandby();
    }

    /**
     * A page and where it came from.
     *
     * @param name as it is called in messages
     * @param stem what its figures' files begin with
     * @param folder where its rows' files are looked for first
     * @param source its file's name and the stamp of what that holds
     */
    record Page(String name, String stem, Optional<Path> folder, Worksheet worksheet, Imprint.Source source) {
        Page withDials(Map<String, Double> dials) {
            Worksheet set = worksheet;
            for (Map.Entry<String, Double> dial : dials.entrySet()) {
                set = set.withDial(dial.getKey(), dial.getValue());
            }
            return new Page(name, stem, folder, set, source);
        }
    }

    /** Runs a page and returns its rows' outcomes. */
    List<Outcome> run(Page page) {
        checkJava();
        try (Session session = Sessions.open(page.folder().map(settings::in).orElse(settings))) {
            session.show(withoutWaiting(page.worksheet()));
            return session.settle();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new Refusal("the run was interrupted.", e);
        }
    }

    /**
     * Refuses a Java that cannot run rows.
     *
     * @throws Refusal naming the module that it lacks, and the Java
     */
    static void checkJava() {
        Sessions.missingModule().ifPresent(sentence -> {
            throw new Refusal(sentence);
        });
    }

    /** A row's place in messages; a row that has no name is called by its number, as {@code row 2}. */
    static String place(String page, String rowName) {
        return page + ", " + (rowName.startsWith("row ") ? rowName : "row " + rowName);
    }

    /** Prints results as data and everything that went wrong as messages. */
    void print(Page page, List<Outcome> outcomes) {
        console.data().println(page.worksheet().title());
        CautionsSaid said = new CautionsSaid();
        for (Outcome outcome : outcomes) {
            console.data().print(outcome.printed());
            outcome.result().ifPresent(result -> console.data().print(text(outcome, result, said)));
        }
        printMessages(page, outcomes);
    }

    /** Says what went wrong, row by row. */
    void printMessages(Page page, List<Outcome> outcomes) {
        for (Outcome outcome : outcomes) {
            if (!outcome.message().isEmpty()) {
                console.message(place(page.name(), outcome.name()) + ", "
                        + outcome.state().words() + ": " + outcome.message());
            }
        }
        unfilled(page, outcomes).forEach(console::message);
    }

    /** For each place of a note that no row fills, one sentence. */
    private static List<String> unfilled(Page page, List<Outcome> outcomes) {
        Prose prose = Prose.of(outcomes);
        return page.worksheet().rows().stream()
                .filter(Row.Note.class::isInstance)
                .flatMap(note -> prose.fill(note.text()).missing().stream()
                        .map(sentence -> page.name() + ", note " + note.id() + ": " + sentence))
                .toList();
    }

    /** Whether every row is fresh and every place of a note filled. */
    static boolean isWhole(Page page, List<Outcome> outcomes) {
        return allFresh(outcomes) && unfilled(page, outcomes).isEmpty();
    }

    /** Writes each figure as SVG and CSV. */
    void writeFigures(Page page, List<Outcome> outcomes, Path folder) {
        for (Outcome outcome : outcomes) {
            if (outcome.result().orElse(null) instanceof Result.Shown shown) {
                String file = page.stem() + "-" + outcome.name().replaceAll("[^\\p{L}\\p{N}_-]+", "-");
                write(folder.resolve(file + ".svg"), Svg.bytes(shown.figure(), SVG_WIDTH, Palette.LIGHT));
                write(folder.resolve(file + ".csv"), Csv.write(shown.figure()).getBytes(StandardCharsets.UTF_8));
            }
        }
    }

    /** What rows may read and how long they may take. */
    static Session.Settings settings(String timeLimit) {
        Session.Settings usual =
                Session.Settings.standard().withUserFolder(Places.here().worksheets());
        return timeLimit == null ? usual : usual.withTimeLimit(seconds(Console.number(timeLimit, "--time-limit")));
    }

    static boolean allFresh(List<Outcome> outcomes) {
        return outcomes.stream().allMatch(outcome -> outcome.state() == State.FRESH);
    }

    /** The time limit of an option in seconds. */
    static Duration seconds(double seconds) {
        if (!(seconds > 0) || seconds > 86_400) {
            throw new Refusal("--time-limit is " + Decimals.shown(seconds)
                    + " s; accepted is above 0 and at most 86400 seconds.");
        }
        return Duration.ofMillis(Math.round(seconds * 1000));
    }

    private static void write(Path file, byte[] bytes) {
        SafeFile.onDisk().write(file, bytes);
    }

    private static String text(Outcome outcome, Result result, CautionsSaid said) {
        if (result instanceof Result.Shown shown) {
            return shownText(said.next(shown.figure()));
        }
        return outcome.name() + ": " + words(outcome.name(), result) + "\n";
    }

    /** A number with the unit that its name says. */
    private static String words(String name, Result result) {
        return result instanceof Result.Value value ? Decimals.typed(value.said(name)) : ((Result.Text) result).text();
    }

    private static String shownText(Figure figure) {
        return "\n" + TextTable.write(shortened(figure)) + "\n";
    }

    private static Figure shortened(Figure figure) {
        if (figure instanceof MapFigure map) {
            return map.table(MapCommand.ROWS_PRINTED, MapCommand.COLUMNS_PRINTED);
        }
        return figure instanceof Chart chart ? chart.table(STEPS_PRINTED) : figure;
    }

    private static Worksheet withoutWaiting(Worksheet page) {
        return page.withRows(page.rows().stream().map(PageRunner::awake).toList());
    }

    private static Row awake(Row row) {
        return row instanceof Row.Snippet snippet ? snippet.waiting(false) : row;
    }
}
