package rakeline.engine.jshell;

import java.util.List;
import java.util.Set;
import rakeline.engine.Layout;
import rakeline.engine.PageRow;
import rakeline.engine.RowSource;

/** What runs single rows for {@link PageRun}, and remembers what it compiled of them. */
interface Rows {
    RowSource read(String text);

    /** A row is about to run: from now on it can be stopped. */
    void begin(PageRow row);

    /** Runs the row that was begun, as it was compiled where that still holds. */
    Run run(PageRow row, Layout page);

    /** Runs again what was compiled of a row, in a worker that took over from another. */
    Run replay(PageRow row, Layout page);

    /** Whether the row has been compiled, to its end, against the rows above it as they now are. */
    boolean canRepeat(String id);

    /** Whether calls of the row are known, be it only those up to its first failure. */
    boolean isKnown(String id);

    /** Whether a variable's value can change, as its last run showed; true where that is not known. */
    boolean changing(String variable);

    /** Takes the names of rows away. */
    void forget(List<String> idsInPageOrder);

    /** Goes on with another worker that knows the classes and dials, but in which nothing has run. */
    void replaceWorker();

    /** Starts over: nothing is compiled, nothing has run. */
    void startOver();

    /** Tells the worker where dials and pickers stand; a worker that is gone is told when it is replaced. */
    void tell(Set<String> names);

    /** Tells the worker the page's rack. */
    void tellRack();

    /** Whether this is the worker in force. */
    boolean uses(Worker worker);
}
