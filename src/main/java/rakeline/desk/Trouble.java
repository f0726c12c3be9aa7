package rakeline.desk;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileSystemException;
import java.nio.file.FileSystemLoopException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import rakeline.quantity.Refusal;

/** Turns what the system says of a file into one plain sentence. */
final class Trouble {
    /** A step that may fail. */
    @FunctionalInterface
    interface Step<T> {
        T take() throws IOException;
    }

    private Trouble() {}

    static <T> T reading(Path file, Step<T> step) {
        return take(file + " cannot be read: ", step);
    }

    static <T> T writing(Path file, Step<T> step) {
        return take(file + " is not written: ", step);
    }

    private static <T> T take(String place, Step<T> step) {
        try {
            return step.take();
        } catch (IOException e) {
            throw new Refusal(place + reason(e) + ".", e);
        }
    }

    private static String reason(IOException e) {
        if (e instanceof AccessDeniedException) {
            return "you have no permission to, or its folder may only be read";
        }
        if (e instanceof NoSuchFileException) {
            return "it or its folder is not there any more";
        }
        if (e instanceof FileSystemLoopException) {
            return "its links run in a circle";
        }
        return e instanceof AtomicMoveNotSupportedException ? "its disk cannot swap files at once" : spoken(e);
    }

    /** As the system words it, where it is not one of the two that everyone meets. */
    private static String spoken(IOException e) {
        String words = e instanceof FileSystemException of ? of.getReason() : e.getMessage();
        String said = Optional.ofNullable(words).orElse("the system does not say why");
        String lower = said.toLowerCase(Locale.ROOT);
        if (lower.contains("no space") || lower.contains("not enough space") || lower.contains("quota")) {
            return "the disk is full";
        }
        return lower.contains("read-only") ? "the disk that it lies on may only be read" : said;
    }
}
