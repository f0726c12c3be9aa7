package rakeline.shell.ledger;

import java.awt.BorderLayout;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import javax.swing.JComponent;
import javax.swing.JTextArea;
import rakeline.shell.look.Heights;
import rakeline.shell.look.Look;
import rakeline.shell.page.Bench;
import rakeline.worksheet.Row;

/** A note: set as text to read, and while it is edited as the plain text that it is. */
final class NoteView extends AuthorView {
    private static final String UNREAD = "\0";

    private final transient Look look;
    private final NotePane reading;
    private final JTextArea editing = new JTextArea();
    private final transient TypedText typed;
    private String set = UNREAD;

    NoteView(Look look, Bench bench, String id) {
        this.look = look;
        reading = new NotePane(look);
        typed = new TypedText(editing, bench, id);
        setUpReading(bench, id);
        setUpEditing(bench);
        setLayout(new BorderLayout());
        setOpaque(false);
        add(reading, BorderLayout.CENTER);
    }

    private void setUpReading(Bench bench, String id) {
        reading.addMouseListener(new MouseAdapter() {
            @Override
            public void mousePressed(MouseEvent event) {
                bench.select(id);
            }

            @Override
            public void mouseClicked(MouseEvent event) {
                if (event.getClickCount() == 2) {
                    edit();
                }
            }
        });
    }

    private void setUpEditing(Bench bench) {
        editing.setFont(look.code());
        editing.setForeground(look.ink());
        editing.setLineWrap(true);
        editing.setWrapStyleWord(true);
        editing.setOpaque(false);
        editing.setBorder(null);
        editing.getAccessibleContext().setAccessibleName("Note, plain text");
        TextDrop.install(editing);
        editing.addFocusListener(new FocusAdapter() {
            @Override
            public void focusLost(FocusEvent event) {
                if (!event.isTemporary()) {
                    swap(reading);
                    bench.commit();
                }
            }
        });
    }

    @Override
    void edit() {
        swap(editing);
        editing.requestFocusInWindow();
    }

    @Override
    void point(int from, int to) {
        swap(editing);
        editing.select(from, to);
        editing.getCaret().setSelectionVisible(true);
    }

    @Override
    void pointNowhere() {
        if (!editing.hasFocus()) {
            swap(reading);
        }
    }

    private void swap(JComponent shown) {
        if (getComponent(0) != shown) {
            removeAll();
            add(shown, BorderLayout.CENTER);
            revalidate();
            repaint();
        }
    }

    @Override
    void show(Row row, boolean nowFolded) {
        typed.show(row.text());
        reading.getAccessibleContext()
                .setAccessibleName("Note: " + row.text().lines().findFirst().orElse("empty"));
    }

    /** Sets the note to read, its numbers filled in. */
    void read(String text) {
        String wanted = text.isBlank() ? "*An empty note: double-click to write*" : text;
        if (!wanted.equals(set)) {
            set = wanted;
            reading.show(wanted);
            revalidate();
        }
    }

    /** Whether nothing has been set yet. */
    boolean isUnread() {
        return set.equals(UNREAD);
    }

    @Override
    JComponent editor() {
        return editing;
    }

    @Override
    public int heightFor(int width) {
        return Heights.of(getComponent(0), width);
    }
}
