package rakeline.desk;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;

/** The single steps that reading and writing take, each of which can fail on its own. */
interface FileLayer {
    /** At most so many bytes from the start. */
    byte[] read(Path file, int limit) throws IOException;

    boolean exists(Path file);

    boolean isFolder(Path file);

    boolean isPlain(Path file);

    boolean isWritable(Path file);

    /** What lies in a folder, in the order of names. */
    List<Path> list(Path folder) throws IOException;

    Instant modified(Path file) throws IOException;

    /** Where the links that a path may consist of lead, whether or not something is there. */
    Path target(Path file) throws IOException;

    /** Bytes that can still be written beside this file. */
    long room(Path folder) throws IOException;

    boolean isReadOnly(Path folder) throws IOException;

    void createFolders(Path folder) throws IOException;

    /** Creates a file that was not there, with the permissions that new files have. */
    void create(Path file) throws IOException;

    void write(Path file, byte[] bytes) throws IOException;

    /** Until the bytes are on the disk itself. */
    void force(Path file) throws IOException;

    void copyPermissions(Path from, Path to) throws IOException;

    /** At once: whoever looks sees the old or the new file. */
    void replace(Path from, Path to) throws IOException;

    /** At once, where no file has that name. */
    void rename(Path from, Path to) throws IOException;

    void delete(Path file) throws IOException;

    /** Until the folder's list of names is on the disk itself, where the system can do that. */
    void forceFolder(Path folder) throws IOException;
}
