package rakeline.command;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import picocli.CommandLine.Option;
import rakeline.desk.SafeFile;
import rakeline.figure.Csv;
import rakeline.figure.Figure;
import rakeline.figure.Table;
import rakeline.figure.TextTable;
import rakeline.figure.paint.Palette;
import rakeline.figure.paint.Svg;
import rakeline.quantity.Refusal;

/** In which forms a command gives its figure: files, CSV, JSON, or text where none is asked for. */
final class Output {
    private static final int SVG_WIDTH = 800;

    @Option(names = "--csv", paramLabel = "FILE", description = "Writes CSV; - is standard output.")
    private String csv;

    @Option(names = "--svg", paramLabel = "FILE", description = "Writes the figure; - is standard output.")
    private String svg;

    @Option(names = "--json", description = "Prints JSON.")
    private boolean json;

    /**
     * Gives what a command found. Files first: where one cannot be written, nothing is printed.
     *
     * @param drawn for SVG
     * @param listed for CSV
     * @param read for a terminal
     * @param asJson for JSON, a tree of plain values
     */
    void give(Console console, Figure drawn, Figure listed, Supplier<String> read, Supplier<Object> asJson) {
        checkOnePrinted();
        if (csv != null && !isPrinted(csv)) {
            SafeFile.onDisk().write(Paths.of(csv), Csv.write(listed).getBytes(StandardCharsets.UTF_8));
        }
        if (svg != null && !isPrinted(svg)) {
            SafeFile.onDisk().write(Paths.of(svg), Svg.bytes(drawn, SVG_WIDTH, Palette.LIGHT));
        }
        print(console, drawn, listed, read, asJson);
    }

    /** Gives figures: one drawn, one listed, one read. */
    void give(Console console, Figure drawn, Figure listed, Figure read, Supplier<Object> asJson) {
        give(console, drawn, listed, () -> TextTable.write(read), asJson);
    }

    /** Gives a figure that is drawn, listed and read alike. */
    void give(Console console, Figure figure, Supplier<Object> asJson) {
        give(console, figure, figure, figure, asJson);
    }

    /** Tables under one another, as a terminal shows them. */
    static String text(Table... tables) {
        return Arrays.stream(tables).map(TextTable::write).collect(Collectors.joining("\n"));
    }

    private void print(Console console, Figure drawn, Figure listed, Supplier<String> read, Supplier<Object> asJson) {
        if (json) {
            console.json(asJson.get());
        }
        if (isPrinted(csv)) {
            console.data().print(Csv.write(listed));
        }
        if (isPrinted(svg)) {
            console.data().writeBytes(Svg.bytes(drawn, SVG_WIDTH, Palette.LIGHT));
        }
        if (isText()) {
            console.data().print(read.get());
        }
    }

    /** Whether text for a terminal is all that is asked for. */
    boolean isText() {
        return !json && csv == null && svg == null;
    }

    private void checkOnePrinted() {
        if (Stream.of(json, isPrinted(csv), isPrinted(svg))
                        .filter(printed -> printed)
                        .count()
                > 1) {
            throw new Refusal("--json, --csv - and --svg - all print; accepted is one of them.");
        }
    }

    private static boolean isPrinted(String file) {
        return "-".equals(file);
    }
}
