package rakeline.engine.jshell;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.function.Predicate;
import org.junit.jupiter.api.extension.AfterAllCallback;
import org.junit.jupiter.api.extension.BeforeEachCallback;
import org.junit.jupiter.api.extension.ExtensionContext;
import rakeline.engine.Outcome;
import rakeline.engine.Result;
import rakeline.engine.Session;
import rakeline.engine.State;
import rakeline.worksheet.Worksheet;

/**
 * A session for tests, with what it says kept, and the words in which tests speak about outcomes. As an extension it
 * lives as long as a class of tests, and forgets what was said before each.
 */
final class Running implements AutoCloseable, BeforeEachCallback, AfterAllCallback {
    private static final long PATIENCE_SECONDS = 60;

    private final Session session;
    private final BlockingQueue<Session.Event> said = new LinkedBlockingQueue<>();
    private List<Outcome> outcomes = List.of();

    Running(Session.Settings settings) {
        session = Sessions.open(settings);
        session.listen(said::add);
    }

    static Running standard() {
        return new Running(Session.Settings.standard());
    }

    Session session() {
        return session;
    }

    Running run(String... rows) throws InterruptedException {
        return run(Pages.of(rows));
    }

    Running run(Worksheet page) throws InterruptedException {
        session.show(page);
        return settle();
    }

    Running settle() throws InterruptedException {
        outcomes = session.settle();
        return this;
    }

    List<Outcome> outcomes() {
        return outcomes;
    }

    Outcome row(String id) {
        return outcomes.stream()
                .filter(each -> each.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    String value(String id) {
        assertThat(row(id).state()).as(row(id).message()).isEqualTo(State.FRESH);
        Optional<Result> result = row(id).result();
        return result.map(Running::words).orElse("nothing");
    }

    State state(String id) {
        return row(id).state();
    }

    String message(String id) {
        return row(id).message();
    }

    /** Forgets what was said so far. */
    void forgetSaid() {
        said.clear();
    }

    /** Waits until something is said that meets the condition. */
    Session.Event await(Predicate<Session.Event> condition) throws InterruptedException {
        while (true) {
            Session.Event event = said.poll(PATIENCE_SECONDS, TimeUnit.SECONDS);
            assertThat(event).as("what the session says").isNotNull();
            if (condition.test(event)) {
                return event;
            }
        }
    }

    /** Waits until a row stands so. */
    void await(String id, State state) throws InterruptedException {
        await(event -> event instanceof Session.Event.Row row
                && row.outcome().id().equals(id)
                && row.outcome().state() == state);
    }

    /** The sentence in which another worker was announced. */
    String replaced() throws InterruptedException {
        Session.Event event = await(each -> each instanceof Session.Event.Replaced);
        return ((Session.Event.Replaced) event).sentence();
    }

    @Override
    public void beforeEach(ExtensionContext context) {
        forgetSaid();
    }

    @Override
    public void afterAll(ExtensionContext context) {
        close();
    }

    @Override
    public void close() {
        session.close();
    }

    private static String words(Result result) {
        if (result instanceof Result.Value value) {
            return value.text();
        }
        return result instanceof Result.Text text ? "\"" + text.text() + "\"" : result.toString();
    }
}
