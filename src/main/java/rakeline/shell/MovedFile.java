package rakeline.shell;

import java.awt.Component;
import java.nio.file.Path;
import javax.swing.JOptionPane;

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
        Object[] answers = {"Find it…", "Take it off the list", "Go back"};
        int answer = JOptionPane.showOptionDialog(
                over,
                file.getFileName() + " is no longer in " + file.getParent() + ".",
                "A file has moved",
                JOptionPane.DEFAULT_OPTION,
                JOptionPane.PLAIN_MESSAGE,
                null,
                answers,
                answers[0]);
        return answer == 0 ? Answer.FIND : answer == 1 ? Answer.FORGET : Answer.GO_BACK;
    }
}
