package rakeline.shell.page;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Consumer;
import java.util.function.Function;
import javax.swing.SwingUtilities;
import rakeline.engine.Session;

/**
 * One page's session, kept off the event thread: what it is told goes through a thread of its own, what it says comes
 * back on the event thread, all that came meanwhile at once.
 */
final class Runner implements AutoCloseable {
    /** Who hears what the session says, on the event thread. */
    interface Hearer {
        void heard(List<Session.Event> events);

        void failed(Throwable failure);
    }

    private final ExecutorService thread = Executors.newSingleThreadExecutor(Runner::named);
    private final ConcurrentLinkedQueue<Session.Event> events = new ConcurrentLinkedQueue<>();
    private final AtomicBoolean called = new AtomicBoolean();
    private final Hearer hearer;
    private volatile boolean closed;
    private Session session;

    Runner(Function<Session.Settings, Session> maker, Session.Settings settings, Hearer hearer) {
        this.hearer = hearer;
        guarded(() -> {
            session = maker.apply(settings);
            session.listen(this::say);
        });
    }

    private static Thread named(Runnable work) {
        Thread thread = new Thread(work, "page");
        thread.setDaemon(true);
        return thread;
    }

    void tell(Consumer<Session> what) {
        guarded(() -> {
            if (session != null) {
                what.accept(session);
            }
        });
    }

    private void guarded(Runnable work) {
        thread.execute(() -> {
            try {
                work.run();
            } catch (RuntimeException | Error failure) {
                SwingUtilities.invokeLater(() -> hearer.failed(failure));
            }
        });
    }

    private void say(Session.Event event) {
        events.add(event);
        if (called.compareAndSet(false, true)) {
            SwingUtilities.invokeLater(this::deliver);
        }
    }

    private void deliver() {
        called.set(false);
        List<Session.Event> batch = new ArrayList<>();
        for (Session.Event event = events.poll(); event != null; event = events.poll()) {
            batch.add(event);
        }
        if (!closed) {
            hearer.heard(batch);
        }
    }

    /** Ends the session, without waiting for it. */
    @Override
    public void close() {
        closed = true;
        tell(Session::close);
        thread.shutdown();
    }
}
