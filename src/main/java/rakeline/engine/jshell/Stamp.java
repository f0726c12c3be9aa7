package rakeline.engine.jshell;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rakeline.engine.Packer;
import rakeline.engine.Unpacker;

/**
 * A file as it stood when a row read it, or looked for it in vain; or a folder, when a row looked what is in it.
 *
 * @param modified when, as the system tells it; of a folder the names in it; empty where there is no such file
 * @param size in bytes; -1 where there is no such file, or for a folder
 */
record Stamp(String path, String modified, double size) {
    static Stamp of(Path path) {
        try {
            return Files.isDirectory(path)
                    ? new Stamp(path.toString(), names(path), -1)
                    : new Stamp(path.toString(), Files.getLastModifiedTime(path).toString(), Files.size(path));
        } catch (IOException e) {
            return new Stamp(path.toString(), "", -1); // there is none now, which is what matters
        }
    }

    private static String names(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> String.valueOf(file.getFileName()))
                    .sorted()
                    .collect(Collectors.joining("/"));
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
