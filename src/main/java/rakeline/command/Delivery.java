package rakeline.command;

import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.util.Locale;
import java.util.Optional;

/** Standard output, which remembers why something did not get through; a print stream alone would forget it. */
final class Delivery extends FilterOutputStream {
    private volatile IOException trouble;

    Delivery(OutputStream out) {
        super(out);
    }

    @Override
    public void write(int b) throws IOException {
        write(new byte[] {(byte) b}, 0, 1);
    }

    @Override
    public void write(byte[] bytes, int from, int length) throws IOException {
        try {
            out.write(bytes, from, length);
        } catch (IOException e) {
            trouble = e;
            throw e;
        }
    }

    /** What was lost, in one sentence; empty where all got through or the reader, as {@code head}, wanted no more. */
    Optional<String> lost() {
        return Optional.ofNullable(trouble)
                .map(e -> String.valueOf(e.getMessage()))
                .filter(words -> !words.toLowerCase(Locale.ROOT).contains("pipe"))
                .map(words -> "what belongs on standard output could not be written whole: " + words + ".");
    }
}
