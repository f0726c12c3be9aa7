package rakeline.engine;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import rakeline.figure.Chart;
import rakeline.figure.Column;
import rakeline.figure.Drawing;
import rakeline.figure.Figure;
import rakeline.figure.MapFigure;
import rakeline.figure.Table;
import rakeline.quantity.Numbers;

/**
 * The one form in which results and controls travel between processes: lengths, words in UTF-8 and raw doubles, nothing
 * that could name a class. A reader takes nothing on trust: a length that the data cannot hold is refused.
 */
public final class ResultCodec {
    private static final int CHART = 1;
    private static final int TABLE = 2;
    private static final int DRAWING = 3;
    private static final int VALUE = 4;
    private static final int TEXT = 5;
    private static final int MAP = 6;

    private ResultCodec() {}

    public static void write(Packer packer, Result result) throws IOException {
        if (result instanceof Result.Shown shown) {
            writeFigure(packer, shown.figure());
        } else if (result instanceof Result.Value value) {
            packer.number(VALUE).text(value.text()).real(value.number()).list(value.drawings(), DrawingCodec::write);
        } else if (result instanceof Result.Text text) {
            packer.number(TEXT).text(text.text());
        }
    }

    /**
     * Reads one result.
     *
     * @throws IOException where the data is not a result
     * @throws IllegalArgumentException where a part of it is none that its type accepts
     */
    public static Result read(Unpacker unpacker) throws IOException {
        int kind = unpacker.number();
        return switch (kind) {
            case CHART -> new Result.Shown(readChart(unpacker));
            case TABLE -> new Result.Shown(readTable(unpacker));
            case DRAWING -> new Result.Shown(DrawingCodec.read(unpacker));
            case VALUE -> new Result.Value(unpacker.text(), unpacker.real(), unpacker.list(DrawingCodec::read));
            case MAP -> new Result.Shown(MapCodec.read(unpacker));
            case TEXT -> new Result.Text(unpacker.text());
            default -> throw new IOException("no result is of kind " + kind);
        };
    }

    /** How many numbers a figure holds. */
    public static long numbers(Figure figure) {
        if (figure instanceof Chart chart) {
            return chart.steps().size()
                    + chart.panels().stream()
                            .mapToLong(panel -> panel.values().size())
                            .sum();
        }
        if (figure instanceof MapFigure map) {
            return MapCodec.numbers(map);
        }
        long marks = figure instanceof Drawing drawing ? DrawingCodec.numbers(drawing) : 0;
        return marks + figure.columns().stream().mapToLong(Column::size).sum();
    }

    private static void writeFigure(Packer out, Figure figure) throws IOException {
        if (figure instanceof Chart chart) {
            writeChart(out.number(CHART), chart);
        } else if (figure instanceof Table table) {
            writeTable(out.number(TABLE), table);
        } else if (figure instanceof Drawing drawing) {
            DrawingCodec.write(out.number(DRAWING), drawing);
        } else if (figure instanceof MapFigure map) {
            MapCodec.write(out.number(MAP), map);
        }
    }

    private static void writeChart(Packer out, Chart chart) throws IOException {
        QuantityCodec.write(out.text(chart.title()), chart.x());
        out.reals(chart.steps()).real(chart.here());
        out.list(chart.panels(), ResultCodec::writePanel);
        out.list(
                chart.gaps(), (to, gap) -> to.number(gap.step()).text(gap.key()).text(gap.reason()));
        out.text(chart.held());
        QuantityCodec.writeCautions(out, chart.cautions());
        BasisCodec.write(out, chart.basis());
    }

    private static void writePanel(Packer out, Chart.Panel panel) throws IOException {
        QuantityCodec.write(out, panel.quantity());
        out.reals(panel.values()).real(panel.here());
        out.list(
                panel.band().stream().toList(),
                (to, band) -> to.reals(band.halves()).text(band.words()));
    }

    private static Chart.Panel readPanel(Unpacker in) throws IOException {
        return new Chart.Panel(QuantityCodec.read(in), in.reals(), in.real(), readBand(in));
    }

    private static Optional<Chart.Band> readBand(Unpacker in) throws IOException {
        return in.list(from -> new Chart.Band(from.reals(), from.text())).stream()
                .findFirst();
    }

    private static Chart readChart(Unpacker in) throws IOException {
        return new Chart(
                in.text(),
                QuantityCodec.read(in),
                in.reals(),
                in.real(),
                in.list(ResultCodec::readPanel),
                in.list(from -> new Chart.Gap(from.number(), from.text(), from.text())),
                in.text(),
                QuantityCodec.readCautions(in),
                BasisCodec.read(in));
    }

    private static void writeTable(Packer out, Table table) throws IOException {
        out.text(table.title());
        writeColumns(out, table.columns());
        out.text(table.held());
        QuantityCodec.writeCautions(out, table.cautions());
        BasisCodec.write(out, table.basis());
    }

    private static Table readTable(Unpacker in) throws IOException {
        return new Table(in.text(), readColumns(in), in.text(), QuantityCodec.readCautions(in), BasisCodec.read(in));
    }

    static void writeColumns(Packer out, List<Column> columns) throws IOException {
        out.list(
                columns,
                (to, column) -> to.text(column.key())
                        .text(column.label())
                        .text(column.unit())
                        .reals(column.values())
                        .texts(column.shown()));
    }

    static List<Column> readColumns(Unpacker in) throws IOException {
        return in.list(from -> {
            String key = from.text();
            String label = from.text();
            String unit = from.text();
            Numbers values = from.reals();
            return new Column(key, label, unit, values, from.texts());
        });
    }
}
