package rakeline.engine;

import java.io.IOException;
import java.util.List;
import rakeline.quantity.Caution;
import rakeline.quantity.Limit;
import rakeline.quantity.Quantity;
import rakeline.quantity.Range;
import rakeline.quantity.SourceNote;
import rakeline.quantity.SourceStanding;
import rakeline.quantity.Unit;

/** Quantities as they travel with a figure. */
final class QuantityCodec {
    private QuantityCodec() {}

    static void write(Packer out, Quantity quantity) throws IOException {
        out.text(quantity.key()).text(quantity.label()).text(quantity.symbol());
        out.text(quantity.unit().name());
        out.real(quantity.accepted().from()).real(quantity.accepted().to());
        out.number(quantity.decimals()).real(quantity.uncertaintyOrNaN());
        out.text(quantity.definition());
        writeCautions(out, quantity.cautions());
        out.list(
                quantity.limits(),
                (to, limit) -> to.real(limit.value())
                        .text(limit.label())
                        .text(limit.source())
                        .text(limit.side().name())
                        .flag(limit.rule()));
        out.list(
                quantity.sources(),
                (to, note) ->
                        to.text(note.part().name()).text(note.standing().name()).text(note.text()));
    }

    static Quantity read(Unpacker in) throws IOException {
        return new Quantity(
                in.text(),
                in.text(),
                in.text(),
                Unit.valueOf(in.text()),
                new Range(in.real(), in.real()),
                in.number(),
                in.real(),
                in.text(),
                readCautions(in),
                in.list(QuantityCodec::readLimit),
                in.list(from -> new SourceNote(
                        SourceNote.Part.valueOf(from.text()), SourceStanding.valueOf(from.text()), from.text())));
    }

    private static Limit readLimit(Unpacker in) throws IOException {
        return new Limit(in.real(), in.text(), in.text(), Limit.Side.valueOf(in.text()), in.flag());
    }

    static void writeCautions(Packer out, List<Caution> cautions) throws IOException {
        out.list(
                cautions,
                (to, caution) ->
                        to.text(caution.word()).text(caution.sentence()).flag(caution.repeated()));
    }

    static List<Caution> readCautions(Unpacker in) throws IOException {
        return in.list(from -> new Caution(from.text(), from.text(), from.flag()));
    }
}
