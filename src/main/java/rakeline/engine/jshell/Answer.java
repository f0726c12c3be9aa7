package rakeline.engine.jshell;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import rakeline.engine.Control;
import rakeline.engine.ControlCodec;
import rakeline.engine.Packer;
import rakeline.engine.Result;
import rakeline.engine.ResultCodec;
import rakeline.engine.Unpacker;

/** What came of running one snippet in the worker. */
sealed interface Answer {
    /**
     * It ran to its end.
     *
     * @param changing whether the value may change later
     * @param control the dial or picker that it declared
     * @param notice one sentence for the row, or empty
     * @param number the value where it is a plain number, else NaN
     */
    record Done(Optional<Result> result, boolean changing, Optional<Control> control, String notice, double number)
            implements Answer {}

    /**
     * It threw.
     *
     * @param refusal true: the message is one of our own sentences
     * @param places where, innermost first, in classes that hold snippets
     * @param control the dial or picker over which it threw, so that another value can be chosen
     */
    record Threw(String type, String message, boolean refusal, List<Place> places, Optional<Control> control)
            implements Answer {
        /** What Java says of a class whose initialisation did not come to its end; a row's own has no package. */
        private static final Pattern BROKEN_CLASS = Pattern.compile("Could not initialize class \\w+\\..*");

        public Threw {
            places = List.copyOf(places);
        }

        /** The same, thrown over a dial or picker. */
        Threw over(Optional<Control> asked) {
            return new Threw(type, message, refusal, places, asked);
        }

        /** Whether a class of the program or of Java is of no use in this worker any more. */
        boolean isOfBrokenClass() {
            return type.equals(NoClassDefFoundError.class.getName())
                    && BROKEN_CLASS.matcher(message).matches();
        }
    }

    /** A line of a class that holds a snippet. */
    record Place(String className, int line) {}

    /** It was stopped from outside. */
    record Stopped() implements Answer {}

    default void write(Packer out) throws IOException {
        if (this instanceof Done done) {
            writeDone(out.number(0), done);
        } else if (this instanceof Threw threw) {
            out.number(1).text(threw.type()).text(threw.message()).flag(threw.refusal());
            out.list(threw.places(), (to, place) -> to.text(place.className()).number(place.line()));
            writeControl(out, threw.control());
        } else {
            out.number(2);
        }
    }

    /**
     * Reads an answer.
     *
     * @throws IOException where the data is none
     */
    static Answer read(Unpacker in) throws IOException {
        int kind = in.number();
        return switch (kind) {
            case 0 -> readDone(in);
            case 1 ->
                new Threw(
                        in.text(),
                        in.text(),
                        in.flag(),
                        in.list(from -> new Place(from.text(), from.number())),
                        readControl(in));
            case 2 -> new Stopped();
            default -> throw new IOException("no answer is of kind " + kind);
        };
    }

    private static void writeDone(Packer out, Done done) throws IOException {
        out.flag(done.result().isPresent());
        if (done.result().isPresent()) {
            ResultCodec.write(out, done.result().get());
        }
        writeControl(out.flag(done.changing()), done.control());
        out.text(done.notice()).real(done.number());
    }

    private static Done readDone(Unpacker in) throws IOException {
        Optional<Result> result = in.flag() ? Optional.of(ResultCodec.read(in)) : Optional.empty();
        boolean changing = in.flag();
        return new Done(result, changing, readControl(in), in.text(), in.real());
    }

    private static void writeControl(Packer out, Optional<Control> control) throws IOException {
        out.flag(control.isPresent());
        if (control.isPresent()) {
            ControlCodec.write(out, control.get());
        }
    }

    private static Optional<Control> readControl(Unpacker in) throws IOException {
        return in.flag() ? Optional.of(ControlCodec.read(in)) : Optional.empty();
    }
}
