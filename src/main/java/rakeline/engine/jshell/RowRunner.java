package rakeline.engine.jshell;

import java.time.Duration;
import java.util.OptionalInt;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.function.Consumer;
import rakeline.engine.Layout;
import rakeline.engine.PageRow;
import rakeline.engine.RowSource;

/** Runs single rows in whichever worker is in force, within their time limits, and brings in another worker. */
final class RowRunner implements AutoCloseable {
    private final Standby standby;
    private final Stopper stopper;
    private final Values values;
    private final Duration limit;
    private final Consumer<Worker> ended;
    private Evaluator evaluator;

    /**
     * @param limit for rows that set none
     * @param ended told of each worker that has come to its end
     */
    RowRunner(Standby standby, Stopper stopper, Values values, Duration limit, Consumer<Worker> ended) {
        this.standby = standby;
        this.stopper = stopper;
        this.values = values;
        this.limit = limit;
        this.ended = ended;
        this.evaluator = newEvaluator();
    }

    Evaluator evaluator() {
        return evaluator;
    }

    RowSource read(String text) {
        return evaluator.read(text);
    }

    /** A row is about to run: from now on it can be stopped. */
    void begin(PageRow row) {
        stopper.arm(evaluator.worker(), limitOf(row));
    }

    /** Runs the row that was begun, as it was compiled where that still holds. */
    Run run(PageRow row, Layout page) {
        try {
            return evaluator.canRepeat(row.id())
                    ? evaluator.repeat(row, page, limitOf(row))
                    : evaluator.run(row, page, limitOf(row));
        } finally {
            stopper.disarm();
        }
    }

    /** Runs again what was compiled of a row, in a worker that took over from another. */
    Run replay(PageRow row, Layout page) {
        begin(row);
        try {
            return evaluator.repeat(row, page, limitOf(row));
        } finally {
            stopper.disarm();
        }
    }

    private Duration limitOf(PageRow row) {
        OptionalInt own = row.row().timeLimitSeconds();
        return own.isPresent() ? Duration.ofSeconds(own.getAsInt()) : limit;
    }

    /** Goes on with another worker that knows the classes and dials, but in which nothing has run. */
    void replaceWorker() {
        evaluator.worker().close();
        boolean taken = false;
        while (!taken) {
            taken = offer(freshWorker());
        }
    }

    /** Starts over: nothing is compiled, nothing has run. */
    void startOver() {
        evaluator.close();
        evaluator = newEvaluator();
    }

    /** Tells the worker where dials and pickers stand; a worker that is gone is told when it is replaced. */
    void tell(Set<String> names) {
        evaluator.tell(values, names);
    }

    /** Tells the worker the page's rack. */
    void tellRack() {
        evaluator.tellRack(values);
    }

    /** Whether this is the worker in force. */
    boolean uses(Worker worker) {
        return evaluator.worker() == worker;
    }

    @Override
    public void close() {
        evaluator.close();
    }

    private boolean offer(Worker worker) {
        try {
            evaluator.use(worker);
            return true;
        } catch (Worker.Lost e) {
            return false; // it ended before it was of use: the next one is tried
        }
    }

    private Evaluator newEvaluator() {
        return new Evaluator(this::freshWorker, stopper);
    }

    private Worker freshWorker() {
        Worker worker = standby.take();
        standby.replenish();
        CompletableFuture<Void> unused = worker.ended().thenRun(() -> ended.accept(worker));
        try {
            values.tellAll(worker);
            return worker;
        } catch (Worker.Lost e) {
            return freshWorker();
        }
    }
}
