package rakeline.engine;

import java.io.IOException;
import rakeline.figure.MapFigure;

/** Maps as they travel. */
final class MapCodec {
    private MapCodec() {}

    static void write(Packer out, MapFigure map) throws IOException {
        out.text(map.title());
        writeAxis(out, map.x());
        writeAxis(out, map.y());
        QuantityCodec.write(out, map.measure());
        out.reals(map.values()).real(map.here());
        out.texts(map.gaps()).text(map.held());
        QuantityCodec.writeCautions(out, map.cautions());
        BasisCodec.write(out, map.basis());
    }

    static MapFigure read(Unpacker in) throws IOException {
        return new MapFigure(
                in.text(),
                readAxis(in),
                readAxis(in),
                QuantityCodec.read(in),
                in.reals(),
                in.real(),
                in.texts(),
                in.text(),
                QuantityCodec.readCautions(in),
                BasisCodec.read(in));
    }

    static long numbers(MapFigure map) {
        return 0L + map.x().size() + map.y().size() + map.values().size();
    }

    private static void writeAxis(Packer out, MapFigure.Axis axis) throws IOException {
        QuantityCodec.write(out, axis.quantity());
        out.reals(axis.steps()).real(axis.here());
    }

    private static MapFigure.Axis readAxis(Unpacker in) throws IOException {
        return new MapFigure.Axis(QuantityCodec.read(in), in.reals(), in.real());
    }
}
