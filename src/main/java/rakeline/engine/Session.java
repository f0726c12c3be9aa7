package rakeline.engine;

import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import rakeline.worksheet.Worksheet;

/**
 * One page being run. Calls return at once; outcomes arrive at the listener on a thread of the session's own, in the
 * order in which they came true. The page handed in last is the one that counts, the latest value of a dial wins.
 */
public interface Session extends AutoCloseable {
    /**
     * What rows may read and how long they may take.
     *
     * @param folder the worksheet's, tried first when a row names a file
     * @param userFolder the user's Rakeline folder, tried next
     * @param timeLimit for a row that sets none of its own
     * @param heapMegabytes of the worker
     * @param followsLinks whether rows may read what a symbolic link leads to outside of those folders
     * @param standby whether a second worker waits, so that a lost one is replaced at once
     */
    record Settings(
            Optional<Path> folder,
            Optional<Path> userFolder,
            Duration timeLimit,
            int heapMegabytes,
            boolean followsLinks,
            boolean standby) {
        /** 30 s, 512 MB, a worker standing by, files from what is bundled alone. */
        public static Settings standard() {
            return new Settings(Optional.empty(), Optional.empty(), Duration.ofSeconds(30), 512, false, true);
        }

        public Settings in(Path newFolder) {
            return new Settings(Optional.of(newFolder), userFolder, timeLimit, heapMegabytes, followsLinks, standby);
        }

        public Settings withUserFolder(Path newFolder) {
            return new Settings(folder, Optional.of(newFolder), timeLimit, heapMegabytes, followsLinks, standby);
        }

        public Settings withTimeLimit(Duration newLimit) {
            return new Settings(folder, userFolder, newLimit, heapMegabytes, followsLinks, standby);
        }

        public Settings withHeap(int newMegabytes) {
            return new Settings(folder, userFolder, timeLimit, newMegabytes, followsLinks, standby);
        }

        public Settings withoutStandby() {
            return new Settings(folder, userFolder, timeLimit, heapMegabytes, followsLinks, false);
        }

        public Settings followingLinks(boolean follows) {
            return new Settings(folder, userFolder, timeLimit, heapMegabytes, follows, standby);
        }
    }

    /** What a session says. */
    sealed interface Event {
        /** A row stands differently. */
        record Row(Outcome outcome) implements Event {}

        /** So many of the rows that are to run have run. */
        record Progress(int done, int total) implements Event {}

        /** Nothing is left to do of what was asked. */
        record Idle() implements Event {}

        /** A worker was lost and another took over; says which row did what. */
        record Replaced(String sentence) implements Event {}

        /** The session itself failed; nothing runs in it any more. */
        record Broken(String sentence) implements Event {}
    }

    void listen(Consumer<Event> listener);

    /**
     * Takes a new version of the page: rows that changed, and rows that depend on them, run in page order; rows set to
     * wait become waiting. Changed dials and picks count as moved.
     */
    void show(Worksheet page);

    /** Moves a dial: its dependants are invoked again, nothing is compiled. */
    void dial(String name, double value);

    void pick(String name, String path);

    /** These rows are in sight: they come first where nothing comes out otherwise for it. */
    default void look(Set<String> ids) {}

    /** Runs a row even if it waits, with what it needs above it. */
    void runRow(String id);

    /** Runs a row and all rows below it. */
    void runFrom(String id);

    /** Runs every row in a worker that has run nothing before. */
    void runAll();

    /** Stops what runs; the row is then stopped. */
    void stop();

    /**
     * Waits until nothing is left to run, and returns every snippet row's outcome in page order.
     *
     * @throws IllegalStateException where the session has ended, before or while it is waited for
     */
    List<Outcome> settle() throws InterruptedException;

    /** Ends the worker. */
    @Override
    void close();
}
