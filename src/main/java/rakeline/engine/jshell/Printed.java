package rakeline.engine.jshell;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;

/** What a row has printed so far. */
final class Printed {
    private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    private boolean cut;

    void add(byte[] more) {
        bytes.writeBytes(more);
    }

    void cut() {
        cut = true;
    }

    String text() {
        String text = bytes.toString(StandardCharsets.UTF_8);
        return cut ? text + "\n… the row printed more than 64 KB; the rest is left out." : text;
    }
}
