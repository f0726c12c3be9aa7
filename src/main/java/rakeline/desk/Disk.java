package rakeline.desk;

import java.io.IOException;
import java.io.InputStream;
import java.nio.channels.FileChannel;
import java.nio.file.FileSystemLoopException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.util.List;
import java.util.stream.Stream;

/** The machine's own files. */
final class Disk implements FileLayer {
    private static final int LONGEST_CHAIN = 40;

    @Override
    public byte[] read(Path file, int limit) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            return in.readNBytes(limit);
        }
    }

    @Override
    public boolean exists(Path file) {
        return Files.exists(file);
    }

    @Override
    public boolean isFolder(Path file) {
        return Files.isDirectory(file);
    }

    @Override
    public boolean isPlain(Path file) {
        return Files.isRegularFile(file);
    }

    @Override
    public boolean isWritable(Path file) {
        return Files.isWritable(file);
    }

    @Override
    public List<Path> list(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.sorted().toList();
        }
    }

    @Override
    public Instant modified(Path file) throws IOException {
        return Files.getLastModifiedTime(file).toInstant();
    }

    @Override
    public Path target(Path file) throws IOException {
        Path at = file.toAbsolutePath();
        for (int links = 0; Files.isSymbolicLink(at); links++) {
            if (links > LONGEST_CHAIN) {
                throw new FileSystemLoopException(file.toString());
            }
            at = at.resolveSibling(Files.readSymbolicLink(at));
        }
        return at;
    }

    @Override
    public long room(Path folder) throws IOException {
        return Files.getFileStore(folder).getUsableSpace();
    }

    @Override
    public boolean isReadOnly(Path folder) throws IOException {
        return Files.getFileStore(folder).isReadOnly();
    }

    @Override
    public void createFolders(Path folder) throws IOException {
        Files.createDirectories(folder);
    }

    @Override
    public void create(Path file) throws IOException {
        Files.createFile(file);
    }

    @Override
    public void write(Path file, byte[] bytes) throws IOException {
        Files.write(file, bytes, StandardOpenOption.WRITE);
    }

    @Override
    public void force(Path file) throws IOException {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
            channel.force(true);
        }
    }

    @Override
    public void copyPermissions(Path from, Path to) throws IOException {
        if (hasPermissions(from)) {
            Files.setPosixFilePermissions(to, Files.getPosixFilePermissions(from));
        }
    }

    @Override
    public void replace(Path from, Path to) throws IOException {
        Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    }

    @Override
    public void rename(Path from, Path to) throws IOException {
        Files.move(from, to);
    }

    @Override
    public void delete(Path file) throws IOException {
        Files.deleteIfExists(file);
    }

    /** Systems without these permissions do not open a folder as a file either. */
    @Override
    public void forceFolder(Path folder) throws IOException {
        if (hasPermissions(folder)) {
            try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
                channel.force(true);
            }
        }
    }

    private static boolean hasPermissions(Path file) {
        return file.getFileSystem().supportedFileAttributeViews().contains("posix");
    }
}
