package rakeline.desk;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.logging.Level;
import java.util.logging.Logger;
import rakeline.quantity.Decimals;
import rakeline.quantity.Refusal;

/**
 * Reads files whole and writes them whole or not at all: into a new file beside the old one, forced to the disk, then
 * put in its place in one move. Whatever fails, the old content stands, nothing is left lying about, and a
 * {@link Refusal} says in one sentence what is the matter.
 *
 * <p>Permissions are kept and symbolic links followed; the file's owner becomes whoever writes, and other hard links
 * to it keep the old content.
 */
public final class SafeFile {
    private static final Logger LOG = Logger.getLogger(SafeFile.class.getName());

    /** Bytes; a file beyond this is another one than any that was read here. */
    static final int LARGEST_COMPARED = 64_000_000;

    private final FileLayer files;
    private final Leftovers leftovers;

    SafeFile(FileLayer files) {
        this.files = files;
        this.leftovers = new Leftovers(files, Clock.systemUTC());
    }

    /** On the machine's own disk. */
    public static SafeFile onDisk() {
        return new SafeFile(new Disk());
    }

    public boolean exists(Path file) {
        return files.exists(file);
    }

    /**
     * Reads a file whole.
     *
     * @param limit the size in bytes beyond which it is refused
     */
    public byte[] read(Path file, int limit) {
        checkReadable(file);
        byte[] bytes = Trouble.reading(file, () -> files.read(file, limit + 1));
        if (bytes.length > limit) {
            throw new Refusal(file + " is larger than " + Decimals.shortest(limit / 1e6) + " MB.");
        }
        return bytes;
    }

    private void checkReadable(Path file) {
        if (files.isFolder(file)) {
            throw new Refusal(file + " is a folder; accepted is a file.");
        }
        if (!files.exists(file)) {
            throw new Refusal(file + " does not exist.");
        }
        if (!files.isPlain(file)) {
            throw new Refusal(file + " is a device; accepted is a file.");
        }
    }

    /**
     * Writes a file, whatever is there; the folder must be there.
     *
     * @return the stamp of what was written
     */
    public Stamp write(Path file, byte[] bytes) {
        Path target = Trouble.writing(file, () -> files.target(file));
        Path folder = target.getParent();
        check(target, folder, bytes.length);
        put(target, Leftovers.beside(folder), bytes);
        forceNames(folder);
        leftovers.clear(folder);
        return Stamp.of(bytes);
    }

    /** Takes away what a program that was killed while it wrote has left in a folder. */
    void clearLeftovers(Path folder) {
        leftovers.clear(folder);
    }

    private void check(Path target, Path folder, long size) {
        if (files.isFolder(target)) {
            throw new Refusal(target + " is a folder; accepted is a file.");
        }
        if (!files.isFolder(folder)) {
            throw new Refusal(target + " is not written: the folder " + folder + " is not there (any more).");
        }
        if (files.exists(target) && !(files.isPlain(target) && files.isWritable(target))) {
            throw new Refusal(target + " is not written: the file may only be read.");
        }
        checkStore(target, folder, size);
    }

    private void checkStore(Path target, Path folder, long size) {
        if (Trouble.writing(target, () -> files.isReadOnly(folder))) {
            throw new Refusal(target + " is not written: the disk that it lies on may only be read.");
        }
        if (Trouble.writing(target, () -> files.room(folder)) < size) {
            throw new Refusal(target + " is not written: the disk is full.");
        }
    }

    private void put(Path target, Path beside, byte[] bytes) {
        try {
            Trouble.writing(target, () -> {
                files.create(beside);
                files.write(beside, bytes);
                if (files.exists(target)) {
                    files.copyPermissions(target, beside);
                }
                files.force(beside);
                files.replace(beside, target);
                return target;
            });
        } catch (Refusal refusal) {
            throw cleaned(beside, refusal);
        }
    }

    private Refusal cleaned(Path beside, Refusal refusal) {
        try {
            files.delete(beside);
        } catch (IOException e) {
            refusal.addSuppressed(e);
        }
        return refusal;
    }

    /** By now the new content stands; a system that cannot force a folder is no reason to call it unwritten. */
    private void forceNames(Path folder) {
        try {
            files.forceFolder(folder);
        } catch (IOException e) {
            LOG.log(Level.WARNING, "a folder was not forced to the disk", e);
        }
    }

    /** Writes a file, making its folder where it is not there yet. */
    public Stamp writeOwn(Path file, byte[] bytes) {
        Trouble.writing(file, () -> {
            files.createFolders(file.getParent());
            return file;
        });
        return write(file, bytes);
    }

    /**
     * Writes a file unless someone else has changed it meanwhile; one that is gone is written anew.
     *
     * @param known what was read from it or written to it last
     * @return the stamp of what was written
     * @throws Refusal also where the file has changed, and then nothing is written
     */
    public Stamp replace(Path file, byte[] bytes, Stamp known) {
        if (isChanged(file, known)) {
            throw new Refusal(
                    file + " is not written: another program has changed it since it was read here. Save under"
                            + " another name to keep both.");
        }
        return write(file, bytes);
    }

    /** True where the file is there and holds something else. */
    public boolean isChanged(Path file, Stamp known) {
        return files.exists(file)
                && !Stamp.of(Trouble.reading(file, () -> files.read(file, LARGEST_COMPARED)))
                        .equals(known);
    }

    /** The files in a folder that end so, in the order of names; none where it is not there. */
    public List<Path> list(Path folder, String ending) {
        if (!files.isFolder(folder)) {
            return List.of();
        }
        return Trouble.reading(folder, () -> files.list(folder)).stream()
                .filter(file -> file.getFileName().toString().endsWith(ending))
                .toList();
    }

    /**
     * Gives a file another name in its folder.
     *
     * @throws Refusal where that name is taken, or the disk does not do it; then the file is where it was
     */
    public void rename(Path from, Path to) {
        if (files.exists(to)) {
            throw new Refusal(to + " is there already; accepted is a name that no file has.");
        }
        Trouble.writing(from, () -> {
            files.rename(from, to);
            return to;
        });
        forceNames(to.getParent());
    }

    /** Takes away a file that was written here. */
    void delete(Path file) {
        Trouble.writing(file, () -> {
            files.delete(file);
            return file;
        });
    }

    /** Moves a file of the program's own aside, under the first name that is free. */
    Path setAside(Path file) {
        String name = file.getFileName().toString();
        Path aside = file.resolveSibling(name + ".broken");
        for (int i = 2; files.exists(aside); i++) {
            aside = file.resolveSibling(name + ".broken-" + i);
        }
        Path free = aside;
        return Trouble.writing(file, () -> {
            files.replace(file, free);
            return free;
        });
    }
}
