package rakeline.engine.jshell;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashSet;
import java.util.Set;

/** What a row has printed so far, and the files that it has read. */
final class Printed {
    private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    private final Set<Stamp> files = new LinkedHashSet<>();
    private boolean cut;

    void add(byte[] more) {
        bytes.writeBytes(more);
    }

    void read(Stamp file) {
        files.add(file);
    }

    Set<Stamp> files() {
        return files;
    }

    void cut() {
        cut = true;
    }

    String text() {
        String text = bytes.toString(StandardCharsets.UTF_8);
        return cut ? text + "\n… the row printed more than 64 KB; the rest is left out." : text;
    }
}
