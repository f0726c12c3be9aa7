package rakeline.command;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.stream.Collectors;
import picocli.CommandLine.Option;
import rakeline.desk.SafeFile;
import rakeline.figure.Csv;
import rakeline.figure.Drawing;
import rakeline.figure.Table;
import rakeline.figure.TextTable;
import rakeline.figure.paint.Palette;
import rakeline.figure.paint.Svg;

/** Where a command's table, drawing and JSON go: files first; where one cannot be written, nothing is printed. */
final class Written {
    private static final int SVG_WIDTH = 800;

    @Option(names = "--csv", paramLabel = "FILE", description = "Writes the table as CSV; - is standard output.")
    private String csv;

    @Option(names = "--svg", paramLabel = "FILE", description = "Writes the side views, laid over each other at BB.")
    private String svg;

    @Option(names = "--json", description = "Prints JSON.")
    private boolean json;

    /**
     * Writes what was asked for.
     *
     * @param whole the table for a file
     * @param text what a person reads where nothing else was asked for
     */
    void write(Console console, Table whole, String text, Drawing drawing, Object asJson) {
        if (csv != null && !csv.equals("-")) {
            SafeFile.onDisk().write(Paths.of(csv), Csv.write(whole).getBytes(StandardCharsets.UTF_8));
        }
        if (svg != null) {
            SafeFile.onDisk().write(Paths.of(svg), Svg.bytes(drawing, SVG_WIDTH, Palette.LIGHT));
        }
        if (json) {
            console.json(asJson);
        }
        if ("-".equals(csv)) {
            console.data().print(Csv.write(whole));
        }
        if (!json && csv == null && svg == null) {
            console.data().print(text);
        }
    }

    static String text(Table... tables) {
        return Arrays.stream(tables).map(TextTable::write).collect(Collectors.joining("\n"));
    }
}
