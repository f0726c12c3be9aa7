package rakeline.shell.rack;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import rakeline.desk.RackView;
import rakeline.desk.SafeFile;

/** What the rack is given by the window that it stands in. */
public interface Host {
    /** Does work off the event thread, one piece after the other, and tells on the event thread what came of it. */
    <T> void aside(Supplier<T> work, Consumer<T> done, Consumer<String> refused);

    SafeFile disk();

    /** The user's Rakeline folder. */
    Path userFolder();

    /** How the rack was looked at last. */
    RackView view();

    /** Keeps how it is looked at. */
    void keep(UnaryOperator<RackView> change);

    /** Asks for files to take in. */
    List<Path> filesToOpen(String what, String ending);

    /** Asks for a file to write. */
    Optional<Path> fileToSave(String proposed, String what, String ending);
}
