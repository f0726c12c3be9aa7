package rakeline.engine.jshell;

import java.time.Duration;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.function.Consumer;
import rakeline.engine.Layout;
import rakeline.engine.PageRow;
import rakeline.engine.RowSource;

/** Runs single rows in whichever worker is in force, within their time limits, and brings in another worker. */
final class RowRunner implements Rows, AutoCloseable {
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

    @Override
    public RowSource read(String text) {
        return evaluator.read(text);
    }

    @Override
    public void begin(PageRow row) {
        stopper.arm(row, evaluator.worker(), limitOf(row));
    }

    @Override
    public Run run(PageRow row, Layout page) {
        try {
            return evaluator.canRepeat(row.id())
                    ? evaluator.repeat(row, page, limitOf(row))
                    : evaluator.run(row, page, limitOf(row));
        } finally {
            stopper.disarm();
        }
    }

    @Override
    public Run replay(PageRow row, Layout page) {
        begin(row);
        try {
            return evaluator.repeat(row, page, limitOf(row));
        } finally {
            stopper.disarm();
        }
    }

    @Override
    public boolean canRepeat(String id) {
        return evaluator.canRepeat(id);
    }

    @Override
    public boolean isKnown(String id) {
        return evaluator.isKnown(id);
    }

    @Override
    public boolean changing(String variable) {
        return evaluator.changing(variable);
    }

    @Override
    public void forget(List<String> idsInPageOrder) {
        evaluator.forget(idsInPageOrder);
    }

    private Duration limitOf(PageRow row) {
        OptionalInt own = row.row().timeLimitSeconds();
        return own.isPresent() ? Duration.ofSeconds(own.getAsInt()) : limit;
    }

    @Override
    public void replaceWorker() {
        evaluator.worker().close();
        boolean taken = false;
        while (!taken) {
            taken = offer(freshWorker());
        }
    }

    @Override
    public void startOver() {
        evaluator.close();
        evaluator = newEvaluator();
    }

    @Override
    public void tell(Set<String> names) {
        evaluator.tell(values, names);
    }

    @Override
    public void tellRack() {
        evaluator.tellRack(values);
    }

    @Override
    public boolean uses(Worker worker) {
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
        CompletableFuture<Void> unused = worker.ended().thenRun(() -> ended.accept(worker));
        try {
            values.tellAll(worker);
            return worker;
        } catch (Worker.Lost e) {
            return freshWorker();
        }
    }
}
