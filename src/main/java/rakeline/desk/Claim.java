package rakeline.desk;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;
import java.util.logging.Level;
import java.util.logging.Logger;

/** The sign that a running program uses a journal; the system takes it away however the program ends. */
final class Claim implements AutoCloseable {
    private static final Logger LOG = Logger.getLogger(Claim.class.getName());

    private final Path file;
    private final FileChannel channel;

    private Claim(Path file, FileChannel channel) {
        this.file = file;
        this.channel = channel;
    }

    /** Claims a file that exists for nothing else; empty where another has it, or where the system has no locks. */
    static Optional<Claim> on(Path file) {
        try {
            Files.createDirectories(file.getParent());
            return locked(file, FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE));
        } catch (IOException e) {
            LOG.log(Level.WARNING, "a journal could not be claimed", e);
            return Optional.empty();
        }
    }

    private static Optional<Claim> locked(Path file, FileChannel channel) throws IOException {
        boolean mine = false;
        try {
            FileLock lock = channel.tryLock();
            mine = lock != null;
        } catch (OverlappingFileLockException e) {
            LOG.log(Level.FINE, "this program has it itself", e);
        } finally {
            if (!mine) {
                channel.close();
            }
        }
        return mine ? Optional.of(new Claim(file, channel)) : Optional.empty();
    }

    /** Gives it back. */
    @Override
    public void close() {
        try {
            Files.deleteIfExists(file);
            channel.close();
        } catch (IOException e) {
            LOG.log(Level.WARNING, "a claim stays behind", e);
        }
    }
}
