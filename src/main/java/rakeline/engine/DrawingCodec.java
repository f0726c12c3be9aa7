package rakeline.engine;

import java.io.IOException;
import rakeline.figure.Drawing;

/** Drawings as they travel. */
final class DrawingCodec {
    private static final int PATH = 1;
    private static final int CIRCLE = 2;
    private static final int DIMENSION = 3;
    private static final int LABEL = 4;
    private static final int HANDLE = 5;

    private DrawingCodec() {}

    static void write(Packer out, Drawing drawing) throws IOException {
        out.text(drawing.kind()).text(drawing.title());
        out.list(drawing.marks(), DrawingCodec::writeMark);
        ResultCodec.writeColumns(out, drawing.columns());
        out.text(drawing.held());
        QuantityCodec.writeCautions(out, drawing.cautions());
        BasisCodec.write(out, drawing.basis());
    }

    static Drawing read(Unpacker in) throws IOException {
        return new Drawing(
                in.text(),
                in.text(),
                in.list(DrawingCodec::readMark),
                ResultCodec.readColumns(in),
                in.text(),
                QuantityCodec.readCautions(in),
                BasisCodec.read(in));
    }

    static long numbers(Drawing drawing) {
        return drawing.marks().stream().mapToLong(DrawingCodec::numbers).sum();
    }

    private static long numbers(Drawing.Mark mark) {
        return mark instanceof Drawing.Path path ? 2L * path.points().size() : 4;
    }

    private static void writeMark(Packer out, Drawing.Mark mark) throws IOException {
        if (mark instanceof Drawing.Path path) {
            out.number(PATH).list(path.points(), DrawingCodec::writePoint);
            out.flag(path.closed()).flag(path.filled());
        } else if (mark instanceof Drawing.Circle circle) {
            writePoint(out.number(CIRCLE), circle.centre());
            out.real(circle.radius()).flag(circle.filled());
        } else if (mark instanceof Drawing.Dimension dimension) {
            writePoint(out.number(DIMENSION), dimension.from());
            writePoint(out, dimension.to());
            out.real(dimension.offset()).text(dimension.text()).text(dimension.key());
        } else if (mark instanceof Drawing.Label label) {
            writePoint(out.number(LABEL), label.at());
            out.text(label.text());
        } else if (mark instanceof Drawing.Handle handle) {
            writePoint(out.number(HANDLE), handle.at());
            out.text(handle.key()).text(handle.label());
            out.real(handle.value()).real(handle.perMmX()).real(handle.perMmY());
        }
        out.text(mark.ink().name()).number(mark.overlay());
    }

    private static Drawing.Mark readMark(Unpacker in) throws IOException {
        int kind = in.number();
        return switch (kind) {
            case PATH ->
                new Drawing.Path(in.list(DrawingCodec::readPoint), in.flag(), in.flag(), readInk(in), in.number());
            case CIRCLE -> new Drawing.Circle(readPoint(in), in.real(), in.flag(), readInk(in), in.number());
            case DIMENSION ->
                new Drawing.Dimension(
                        readPoint(in), readPoint(in), in.real(), in.text(), in.text(), readInk(in), in.number());
            case LABEL -> new Drawing.Label(readPoint(in), in.text(), readInk(in), in.number());
            case HANDLE -> readHandle(in);
            default -> throw new IOException("no mark is of kind " + kind);
        };
    }

    private static Drawing.Handle readHandle(Unpacker in) throws IOException {
        Drawing.Point at = readPoint(in);
        String key = in.text();
        String label = in.text();
        double value = in.real();
        double perMmX = in.real();
        double perMmY = in.real();
        readInk(in);
        return new Drawing.Handle(at, key, label, value, perMmX, perMmY, in.number());
    }

    private static void writePoint(Packer out, Drawing.Point point) throws IOException {
        out.real(point.x()).real(point.y());
    }

    private static Drawing.Point readPoint(Unpacker in) throws IOException {
        return new Drawing.Point(in.real(), in.real());
    }

    private static Drawing.Ink readInk(Unpacker in) throws IOException {
        return Drawing.Ink.valueOf(in.text());
    }
}
