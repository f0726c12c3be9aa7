package rakeline.engine.jshell;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Stream;

/**
 * What JShell takes for its remote engine. It passes classes and calls on to whichever worker is in force, keeps the
 * classes and notes the calls, so that they can be made again without compiling, in another worker too; and it keeps a
 * worker's death from JShell, which would close itself.
 */
final class WorkerControl extends NoEngine {
    /** Something that a worker answers. */
    private interface Question {
        Answer ask() throws Worker.Lost;
    }

    /** Something that a worker is told. */
    private interface Message {
        void tell() throws Worker.Lost;
    }

    private final SnippetClasses classes = new SnippetClasses();
    private final List<Worker.Call> calls = new ArrayList<>();
    private final Supplier<Worker> first;
    private Optional<Worker> worker = Optional.empty();
    private final Stopper stopper;
    private Printed printed = new Printed();
    private String declaring = "";
    private boolean shown;
    private boolean again;
    private Optional<Answer> answer = Optional.empty();
    private Optional<Worker.Lost> lost = Optional.empty();

    /** @param first gives the first worker, when one is needed: JShell gets ready meanwhile */
    WorkerControl(Supplier<Worker> first, Stopper stopper) {
        this.first = first;
        this.stopper = stopper;
    }

    /** Goes on with another worker, giving it all classes. */
    void use(Worker another) throws Worker.Lost {
        worker = Optional.of(another);
        lost = Optional.empty();
        another.load(classes.all());
    }

    Worker worker() {
        if (worker.isEmpty()) {
            worker = Optional.of(first.get());
        }
        return worker.get();
    }

    /** Prepares for the evaluation of one snippet. */
    void begin(Printed printedByRow, String declaredControl, boolean resultWanted) {
        printed = printedByRow;
        declaring = declaredControl;
        shown = resultWanted;
        again = false;
        answer = Optional.empty();
        calls.clear();
    }

    /** Prepares for what is compiled once more: the worker has its classes, and runs nothing of it. */
    void beginAgain() {
        again = true;
    }

    /** A class that JShell compiled once more is one that the worker has. */
    void callSame(String compiled, String inWorker) {
        classes.callSame(compiled, inWorker);
    }

    /** The calls that the evaluation made. */
    List<Worker.Call> calls() {
        return List.copyOf(calls);
    }

    /** What came of the last call of the evaluation; none where it called nothing, or the worker was lost. */
    Optional<Answer> answer() {
        return answer;
    }

    /** How the worker was lost, if it was. */
    Optional<Worker.Lost> lost() {
        return lost;
    }

    /** Makes a call again that an evaluation made. */
    Optional<Answer> again(Worker.Call call, boolean resultWanted, Printed printedByRow) {
        shown = resultWanted;
        printed = printedByRow;
        return perform(call);
    }

    /** Asks for the value of a variable. */
    Optional<Answer> show(Recording.Variable variable, Printed printedByRow) {
        return asking(() -> worker().show(variable.className(), variable.name(), printedByRow));
    }

    /** Says that what is printed from now on belongs to another row. */
    void beginRow() {
        lost = Optional.empty();
        telling(() -> worker().beginRow());
    }

    /** Notes what the row has left running, once threads that are coming to their end have ended. */
    void awaitThreads(Printed printedByRow) {
        telling(() -> worker().awaitThreads(printedByRow));
    }

    void release(Recording.Variable variable) {
        telling(() -> worker().release(variable.className(), variable.name()));
    }

    /** Tells the worker where dials and pickers stand; one that is gone is told when it is replaced. */
    void tell(Values values, Set<String> names) {
        telling(() -> values.tell(names, worker()));
    }

    /** Tells the worker the page's rack. */
    void tellRack(Values values) {
        telling(() -> values.tellRack(worker()));
    }

    void closeWorker() {
        worker.ifPresent(Worker::close);
    }

    private void telling(Message message) {
        try {
            message.tell();
        } catch (Worker.Lost e) {
            lost = Optional.of(e);
        }
    }

    /** The name in the worker of a class that JShell named. */
    String nameOf(String className) {
        return classes.nameOf(className);
    }

    /**
     * Takes classes, each under a name of its own.
     *
     * @throws ClassInstallException always: the names that JShell gave them are still free. It would otherwise look for
     *     one that is, at each edit of a row through all those of its edits before
     */
    @Override
    public void load(ClassBytecodes[] loaded) throws ClassInstallException {
        if (!again) {
            take(loaded);
        }
        throw new ClassInstallException("taken under other names", new boolean[loaded.length]);
    }

    private void take(ClassBytecodes[] loaded) {
        Map<String, byte[]> compiled = new LinkedHashMap<>();
        Stream.of(loaded).forEach(each -> compiled.put(each.name(), each.bytecodes()));
        Map<String, byte[]> news = classes.take(compiled);
        telling(() -> worker().load(news));
    }

    @Override
    public String invoke(String className, String methodName) throws StoppedException {
        if (again) {
            return "";
        }
        Worker.Call call = new Worker.Call(classes.nameOf(className), methodName, declaring);
        calls.add(call);
        if (goesOn()) {
            answer = perform(call);
        }
        if (!goesOn()) {
            throw new StoppedException();
        }
        return "";
    }

    private boolean goesOn() {
        boolean failed = answer.isPresent() && !(answer.get() instanceof Answer.Done);
        return !failed && lost.isEmpty() && stopper.cause().isEmpty();
    }

    private Optional<Answer> perform(Worker.Call call) {
        return asking(() -> worker().invoke(call, shown, printed));
    }

    private Optional<Answer> asking(Question question) {
        stopper.entersWorker();
        try {
            return Optional.of(question.ask());
        } catch (Worker.Lost e) {
            lost = Optional.of(e);
            return Optional.empty();
        } finally {
            stopper.leavesWorker();
        }
    }
}
