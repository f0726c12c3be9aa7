package rakeline.engine;

import java.io.IOException;

/** Dials and pickers as they travel. */
public final class ControlCodec {
    private ControlCodec() {}

    public static void write(Packer out, Control control) throws IOException {
        out.flag(control instanceof Control.Dial).text(control.name()).text(control.label());
        if (control instanceof Control.Dial dial) {
            out.text(dial.key()).text(dial.unit());
            out.real(dial.min()).real(dial.max()).real(dial.step());
            out.real(dial.initial()).real(dial.own()).real(dial.value());
            out.number(dial.decimals());
        } else if (control instanceof Control.Picker picker) {
            out.texts(picker.paths()).texts(picker.labels()).text(picker.chosen());
        }
    }

    public static Control read(Unpacker in) throws IOException {
        return in.flag() ? readDial(in) : new Control.Picker(in.text(), in.text(), in.texts(), in.texts(), in.text());
    }

    private static Control readDial(Unpacker in) throws IOException {
        return new Control.Dial(
                in.text(),
                in.text(),
                in.text(),
                in.text(),
                in.real(),
                in.real(),
                in.real(),
                in.real(),
                in.real(),
                in.real(),
                in.number());
    }
}
