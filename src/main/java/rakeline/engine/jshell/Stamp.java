package rakeline.engine.jshell;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import rakeline.engine.Packer;
import rakeline.engine.Unpacker;

/**
 * A file as it stood when a row read it, or looked for it in vain.
 *
 * @param modified when, as the system tells it; empty where there is no such file
 * @param size in bytes; -1 where there is no such file
 */
record Stamp(String path, String modified, double size) {
    static Stamp of(Path path) {
        try {
            return new Stamp(path.toString(), Files.getLastModifiedTime(path).toString(), Files.size(path));
        } catch (IOException e) {
            return new Stamp(path.toString(), "", -1); // there is none now, which is what matters
        }
    }

    static Stamp read(Unpacker in) throws IOException {
        return new Stamp(in.text(), in.text(), in.real());
    }

    void write(Packer out) throws IOException {
        out.text(path).text(modified).real(size);
    }

    /** Whether the file stands otherwise by now. */
    boolean isOutdated() {
        return !of(Path.of(path)).equals(this);
    }
}
