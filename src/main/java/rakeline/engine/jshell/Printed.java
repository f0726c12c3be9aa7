package rakeline.engine.jshell;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashSet;
import java.util.Set;

/** What a row does beside its value: the text that it has printed so far, the files that it read, the threads it left. */
final class Printed {
    private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    private final Set<Stamp> files = new LinkedHashSet<>();
    private RowThreads.Running threads = RowThreads.Running.NONE;
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

    void threads(RowThreads.Running running) {
        threads = running;
    }

    RowThreads.Running threads() {
        return threads;
    }

    void cut() {
        cut = true;
    }

    String text() {
        String text = bytes.toString(StandardCharsets.UTF_8);
        return cut ? text + "\n… the row printed more than 64 KB; the rest is left out." : text;
    }
}
