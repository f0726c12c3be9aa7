package rakeline.shell;

import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.function.Function;
import rakeline.engine.Session;

/** Begins a session before there is a page for it, so that it and the window get ready side by side. */
final class HeadStart implements Function<Session.Settings, Session>, AutoCloseable {
    private final Function<Session.Settings, Session> sessions;
    private final Session.Settings expected;
    private Optional<CompletableFuture<Session>> ready;

    /**
     * @param expected what the first page is likely to be run with
     */
    HeadStart(Function<Session.Settings, Session> sessions, Session.Settings expected) {
        this.sessions = sessions;
        this.expected = expected;
        ready = Optional.of(CompletableFuture.supplyAsync(() -> sessions.apply(expected)));
    }

    /** The session that was begun, where it was begun so and is not taken yet; else another. */
    @Override
    public Session apply(Session.Settings settings) {
        return settings.equals(expected)
                ? take().map(CompletableFuture::join).orElseGet(() -> sessions.apply(settings))
                : another(settings);
    }

    private Session another(Session.Settings settings) {
        close();
        return sessions.apply(settings);
    }

    private synchronized Optional<CompletableFuture<Session>> take() {
        Optional<CompletableFuture<Session>> taken = ready;
        ready = Optional.empty();
        return taken;
    }

    /** Ends the session that was begun, if no page has taken it. */
    @Override
    public void close() {
        take().ifPresent(HeadStart::closeWhenBegun);
    }

    private static void closeWhenBegun(CompletableFuture<Session> begun) {
        CompletableFuture<Void> closed = begun.thenAccept(Session::close);
        closed.exceptionally(failure -> null); // a session that could not be begun needs no closing
    }
}
