package rakeline.desk;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.StandardProtocolFamily;
import java.net.UnixDomainSocketAddress;
import java.nio.ByteBuffer;
import java.nio.channels.AsynchronousCloseException;
import java.nio.channels.ServerSocketChannel;
import java.nio.channels.SocketChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.logging.Level;
import java.util.logging.Logger;

/**
 * How a second start of the program reaches the window that is open already: a socket in the state folder, which only
 * its owner can enter. Where no socket can be made, every start opens a window of its own.
 */
public final class Doorbell implements AutoCloseable {
    private static final Logger LOG = Logger.getLogger(Doorbell.class.getName());
    private static final String NAME = "window.socket";
    private static final int LONGEST = 8192;

    private final ServerSocketChannel door;
    private final Path socket;

    private Doorbell(ServerSocketChannel door, Path socket) {
        this.door = door;
        this.socket = socket;
    }

    /**
     * Hands a file, or the wish to come to the front where there is none, to the window that is open.
     *
     * @return whether one was there to take it
     */
    public static boolean ring(Places places, Optional<Path> file) {
        try (SocketChannel caller = SocketChannel.open(UnixDomainSocketAddress.of(socket(places)))) {
            String wish = file.map(path -> path.toAbsolutePath().toString()).orElse("");
            ByteBuffer bytes = StandardCharsets.UTF_8.encode(wish);
            while (bytes.hasRemaining()) {
                caller.write(bytes);
            }
            caller.shutdownOutput();
            return caller.read(ByteBuffer.allocate(1)) == 1;
        } catch (IOException | UnsupportedOperationException e) {
            LOG.log(Level.FINE, "no window is open", e);
            return false;
        }
    }

    /**
     * Listens for later starts until closed.
     *
     * @param visitor is told, on a thread of its own, the file that a later start was given
     * @return empty where no socket can be made
     */
    public static Optional<Doorbell> hang(Places places, Consumer<Optional<Path>> visitor) {
        Path socket = socket(places);
        try {
            Files.createDirectories(socket.getParent());
            Files.deleteIfExists(socket);
            ServerSocketChannel door = ServerSocketChannel.open(StandardProtocolFamily.UNIX);
            door.bind(UnixDomainSocketAddress.of(socket));
            Doorbell bell = new Doorbell(door, socket);
            Thread listener = new Thread(() -> bell.listen(visitor), "doorbell");
            listener.setDaemon(true);
            listener.start();
            return Optional.of(bell);
        } catch (IOException | UnsupportedOperationException e) {
            LOG.log(Level.WARNING, "later starts cannot reach this window", e);
            return Optional.empty();
        }
    }

    @Override
    public void close() {
        try {
            door.close();
            Files.deleteIfExists(socket);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void listen(Consumer<Optional<Path>> visitor) {
        while (door.isOpen()) {
            try (SocketChannel caller = door.accept()) {
                String wish = read(caller);
                caller.write(ByteBuffer.wrap(new byte[] {1}));
                visitor.accept(wish.isEmpty() ? Optional.empty() : Optional.of(Path.of(wish)));
            } catch (AsynchronousCloseException e) {
                LOG.log(Level.FINE, "the window is closed", e);
            } catch (IOException e) {
                LOG.log(Level.WARNING, "a later start could not be heard", e);
            }
        }
    }

    private static String read(SocketChannel caller) throws IOException {
        ByteBuffer wish = ByteBuffer.allocate(LONGEST);
        int read;
        do {
            read = caller.read(wish);
        } while (read >= 0 && wish.hasRemaining());
        return StandardCharsets.UTF_8.decode(wish.flip()).toString();
    }

    private static Path socket(Places places) {
        return places.state().resolve(NAME);
    }
}
