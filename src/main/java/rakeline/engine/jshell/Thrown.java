package rakeline.engine.jshell;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rakeline.quantity.Refusal;

/** What a snippet threw, as an answer. */
final class Thrown {
    /** The package in which JShell puts the classes that hold snippets. */
    private static final String SNIPPETS = "REPL.";

    private static final int PLACES = 50;

    private Thrown() {}

    static Answer answer(Throwable thrown) {
        boolean halted = Stream.iterate(thrown, each -> each != null, Throwable::getCause)
                .limit(PLACES)
                .anyMatch(each -> each instanceof Halted);
        if (halted) {
            return new Answer.Stopped();
        }
        String type = SnippetClasses.expunged(thrown.getClass().getName());
        return new Answer.Threw(type, message(thrown), thrown instanceof Refusal, places(thrown), Optional.empty());
    }

    private static String message(Throwable thrown) {
        try {
            return Showing.oneLine(SnippetClasses.expunged(String.valueOf(thrown.getMessage())));
        } catch (RuntimeException | Error e) {
            return "its message cannot be read: " + e.getClass().getName();
        }
    }

    private static List<Answer.Place> places(Throwable thrown) {
        return Arrays.stream(thrown.getStackTrace())
                .filter(element -> element.getClassName().startsWith(SNIPPETS))
                .limit(PLACES)
                .map(element -> new Answer.Place(outermost(element.getClassName()), element.getLineNumber()))
                .toList();
    }

    /** {@code REPL.$JShell$3} for {@code REPL.$JShell$3$Wheel}. */
    private static String outermost(String className) {
        int nested = className.indexOf('$', className.indexOf('$', SNIPPETS.length() + 1) + 1);
        return nested < 0 ? className : className.substring(0, nested);
    }
}
