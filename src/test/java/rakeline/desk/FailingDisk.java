package rakeline.desk;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/** The machine's own files, except that one step fails, writing half of what it was given first. */
final class FailingDisk implements FileLayer {
    private final FileLayer real = new Disk();
    private final List<String> taken = new ArrayList<>();
    private final String failing;
    private final IOException failure;

    FailingDisk(String failing, IOException failure) {
        this.failing = failing;
        this.failure = failure;
    }

    static FailingDisk never() {
        return new FailingDisk("", new IOException());
    }

    /** The steps that were taken, in order, the failed one included. */
    List<String> taken() {
        return List.copyOf(taken);
    }

    private void step(String name) throws IOException {
        taken.add(name);
        if (name.equals(failing)) {
            throw failure;
        }
    }

    @Override
    public byte[] read(Path file, int limit) throws IOException {
        step("read");
        return real.read(file, limit);
    }

    @Override
    public boolean exists(Path file) {
        return real.exists(file);
    }

    @Override
    public boolean isFolder(Path file) {
        return real.isFolder(file);
    }

    @Override
    public boolean isPlain(Path file) {
        return real.isPlain(file);
    }

    @Override
    public boolean isWritable(Path file) {
        return !failing.equals("isWritable") && real.isWritable(file);
    }

    @Override
    public List<Path> list(Path folder) throws IOException {
        step("list");
        return real.list(folder);
    }

    @Override
    public Instant modified(Path file) throws IOException {
        step("modified");
        return real.modified(file);
    }

    @Override
    public Path target(Path file) throws IOException {
        step("target");
        return real.target(file);
    }

    @Override
    public long room(Path folder) throws IOException {
        step("room");
        return failing.equals("no room") ? 3 : real.room(folder);
    }

    @Override
    public boolean isReadOnly(Path folder) throws IOException {
        step("isReadOnly");
        return failing.equals("read-only") || real.isReadOnly(folder);
    }

    @Override
    public void createFolders(Path folder) throws IOException {
        step("createFolders");
        real.createFolders(folder);
    }

    @Override
    public void create(Path file) throws IOException {
        step("create");
        real.create(file);
    }

    @Override
    public void write(Path file, byte[] bytes) throws IOException {
        real.write(file, java.util.Arrays.copyOf(bytes, bytes.length / 2));
        step("write");
        real.write(file, bytes);
    }

    @Override
    public void force(Path file) throws IOException {
        step("force");
        real.force(file);
    }

    @Override
    public void copyPermissions(Path from, Path to) throws IOException {
        step("copyPermissions");
        real.copyPermissions(from, to);
    }

    @Override
    public void replace(Path from, Path to) throws IOException {
        step("replace");
        real.replace(from, to);
    }

    @Override
    public void rename(Path from, Path to) throws IOException {
        step("rename");
        real.rename(from, to);
    }

    @Override
    public void delete(Path file) throws IOException {
        step("delete");
        real.delete(file);
    }

    @Override
    public void forceFolder(Path folder) throws IOException {
        step("forceFolder");
        real.forceFolder(folder);
    }
}
