package rakeline.desk;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.logging.FileHandler;
import java.util.logging.Formatter;
import java.util.logging.Handler;
import java.util.logging.LogRecord;
import java.util.logging.Logger;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rakeline.quantity.Refusal;

/**
 * What the program says of itself, in three files of 1 MB that follow each other in the state folder. It never holds
 * the page's text: of an exception it takes the class and the stack, not the message.
 */
public final class Log implements AutoCloseable {
    private static final int FILE_BYTES = 1_000_000;
    private static final int FILES = 3;
    private static final Logger ROOT = Logger.getLogger("rakeline");

    private final Handler handler;

    private Log(Handler handler) {
        this.handler = handler;
    }

    /**
     * Begins to write all that is logged under {@code rakeline}, and has none of it on the console.
     *
     * @throws Refusal where the state folder cannot be written
     */
    public static Log open(Places places) {
        Path folder = places.state().resolve("log");
        Handler handler = Trouble.writing(folder, () -> handler(folder));
        ROOT.setUseParentHandlers(false);
        ROOT.addHandler(handler);
        return new Log(handler);
    }

    private static Handler handler(Path folder) throws IOException {
        Files.createDirectories(folder);
        String pattern = folder.toString().replace("%", "%%") + "/rakeline-%u-%g.log";
        Handler handler = new FileHandler(pattern, FILE_BYTES, FILES, true);
        handler.setEncoding(StandardCharsets.UTF_8.name());
        handler.setFormatter(new Plain());
        return handler;
    }

    @Override
    public void close() {
        ROOT.removeHandler(handler);
        ROOT.setUseParentHandlers(true);
        handler.close();
    }

    /** One line for each record, one for each frame of a stack. */
    static final class Plain extends Formatter {
        @Override
        public String format(LogRecord said) {
            Instant when = said.getInstant().truncatedTo(ChronoUnit.MILLIS);
            String line =
                    when + " " + said.getLevel().getName() + " " + said.getLoggerName() + ": " + formatMessage(said);
            return line + "\n" + causes(said.getThrown());
        }

        private static String causes(Throwable thrown) {
            return Stream.iterate(thrown, each -> each != null, Throwable::getCause)
                    .map(Plain::stack)
                    .collect(Collectors.joining());
        }

        private static String stack(Throwable thrown) {
            return Arrays.stream(thrown.getStackTrace())
                    .map(frame -> "    at " + frame + "\n")
                    .collect(Collectors.joining("", "  " + thrown.getClass().getName() + "\n", ""));
        }
    }
}
