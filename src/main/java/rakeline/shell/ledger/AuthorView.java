package rakeline.shell.ledger;

import javax.swing.JComponent;
import javax.swing.JPanel;
import rakeline.shell.look.Heights;
import rakeline.worksheet.Row;

/** What the author wrote in a row: a note or a snippet. */
abstract class AuthorView extends JPanel implements Heights.Flowing {
    /**
     * Shows the row's text.
     *
     * @param folded as one line, until it is edited
     */
    abstract void show(Row row, boolean folded);

    /** Lets the author type. */
    abstract void edit();

    /** Selects some of the text, in sight, without taking the keys; from and to are places in the row's text. */
    abstract void point(int from, int to);

    /** Points at nothing any more. */
    abstract void pointNowhere();

    /** What is typed in. */
    abstract JComponent editor();
}
