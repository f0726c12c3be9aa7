package rakeline.shell;

import java.awt.Component;
import java.nio.file.Path;
import rakeline.shell.look.Ask;

/** A file opened before that is no longer where it was. */
final class MovedFile {
    /** What becomes of it. */
    enum Answer {
        FIND,
        FORGET,
        GO_BACK
    }

    private MovedFile() {}

    static Answer ask(Component over, Path file) {
        int answer = Ask.among(
                over,
                file.getFileName() + " is no longer in " + file.getParent() + ".",
                "A file has moved",
                0,
                "Locate…",
                "Remove from the list",
                "Cancel");
        return answer == 0 ? Answer.FIND : answer == 1 ? Answer.FORGET : Answer.GO_BACK;
    }
}
