package rakeline.engine;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rakeline.figure.Basis;

/** The bicycles that a figure is about, as they travel. */
final class BasisCodec {
    private BasisCodec() {}

    static void write(Packer out, Basis basis) throws IOException {
        out.list(basis.subjects(), BasisCodec::writeSubject).flag(basis.ofShoe());
    }

    static Basis read(Unpacker in) throws IOException {
        return new Basis(in.list(BasisCodec::readSubject), in.flag());
    }

    private static void writeSubject(Packer out, Basis.Subject subject) throws IOException {
        out.text(subject.name()).text(subject.start()).text(subject.rider());
        out.text(subject.hands()).text(subject.shoe());
        out.list(
                List.copyOf(subject.changed().entrySet()),
                (to, change) -> to.text(change.getKey()).real(change.getValue()));
    }

    private static Basis.Subject readSubject(Unpacker in) throws IOException {
        return new Basis.Subject(in.text(), in.text(), in.text(), in.text(), in.text(), readChanged(in));
    }

    private static Map<String, Double> readChanged(Unpacker in) throws IOException {
        Map<String, Double> changed = new LinkedHashMap<>();
        in.list(from -> Map.entry(from.text(), from.real()))
                .forEach(change -> changed.put(change.getKey(), change.getValue()));
        return changed;
    }
}
