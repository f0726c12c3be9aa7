package rakeline.command;

import java.nio.charset.StandardCharsets;
import java.util.function.Supplier;
import picocli.CommandLine.Option;
import rakeline.desk.SafeFile;
import rakeline.figure.Csv;
import rakeline.figure.Figure;
import rakeline.figure.TextTable;
import rakeline.figure.paint.Palette;
import rakeline.figure.paint.Svg;

/** In which forms a command gives its figure: files, CSV, JSON, or text where none is asked for. */
final class Output {
    private static final int SVG_WIDTH = 800;

    @Option(names = "--csv", paramLabel = "FILE", description = "Writes CSV; - is standard output.")
    private String csv;

    @Option(names = "--svg", paramLabel = "FILE", description = "Writes the figure.")
    private String svg;

    @Option(names = "--json", description = "Prints JSON.")
    private boolean json;

    /**
     * Gives a figure. Files first: where one cannot be written, nothing is printed.
     *
     * @param drawn for SVG
     * @param listed for CSV
     * @param read for a terminal
     * @param asJson for JSON, a tree of plain values
     */
    void give(Console console, Figure drawn, Figure listed, Figure read, Supplier<Object> asJson) {
        if (csv != null && !csvIsPrinted()) {
            SafeFile.onDisk().write(Paths.of(csv), Csv.write(listed).getBytes(StandardCharsets.UTF_8));
        }
        if (svg != null) {
            SafeFile.onDisk().write(Paths.of(svg), Svg.bytes(drawn, SVG_WIDTH, Palette.LIGHT));
        }
        print(console, listed, read, asJson);
    }

    /** Gives a figure that is drawn, listed and read alike. */
    void give(Console console, Figure figure, Supplier<Object> asJson) {
        give(console, figure, figure, figure, asJson);
    }

    private void print(Console console, Figure listed, Figure read, Supplier<Object> asJson) {
        if (json) {
            console.json(asJson.get());
        }
        if (csvIsPrinted()) {
            console.data().print(Csv.write(listed));
        }
        if (!json && csv == null && svg == null) {
            console.data().print(TextTable.write(read));
        }
    }

    private boolean csvIsPrinted() {
        return "-".equals(csv);
    }
}
