package rakeline.shell.ledger;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.FocusListener;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import javax.swing.JComponent;
import javax.swing.JLabel;
import rakeline.shell.look.Heights;
import rakeline.shell.look.Look;
import rakeline.shell.look.Words;
import rakeline.shell.page.Bench;
import rakeline.worksheet.Row;

/** A snippet: highlighted and editable in place; folded, its first line until it is edited. */
final class SnippetView extends AuthorView {
    private final transient Bench bench;
    private final SnippetEditor editor;
    private final JLabel firstLine;
    private final transient TypedText typed;
    private boolean folded;
    private boolean pointed;
    private boolean awaitsKeys;

    SnippetView(Look look, Bench bench, CodeHelp help, String id) {
        super();
        this.bench = bench;
        editor = new SnippetEditor(look);
        firstLine = Words.line("", look.code(), look.soft());
        firstLine.setName("first line");
        typed = new TypedText(editor, bench, id);
        setLayout(new BorderLayout());
        setOpaque(false);
        add(editor, BorderLayout.CENTER);
        editor.addFocusListener(new Leaving(id));
        editor.addFocusListener(new FocusAdapter() {
            @Override
            public void focusGained(FocusEvent event) {
                editor.removeFocusListener(this);
                WordHelp.install(editor, look, help, bench, id);
            }
        });
        firstLine.addMouseListener(new MouseAdapter() {
            @Override
            public void mousePressed(MouseEvent event) {
                bench.select(id);
                edit();
            }
        });
    }

    @Override
    void show(Row row, boolean nowFolded) {
        typed.show(row.text());
        firstLine.setText(summary(row.text()));
        firstLine.getAccessibleContext().setAccessibleName("Snippet, first line: " + summary(row.text()));
        folded = nowFolded;
        settle();
    }

    private static String summary(String text) {
        String first = text.lines().filter(line -> !line.isBlank()).findFirst().orElse("empty snippet");
        return first.strip() + (text.strip().lines().count() > 1 ? " …" : "");
    }

    private void settle() {
        Component wanted = folded && !pointed && !awaitsKeys && !editor.hasFocus() ? firstLine : editor;
        if (getComponent(0) != wanted) {
            removeAll();
            add(wanted, BorderLayout.CENTER);
            revalidate();
            repaint();
        }
    }

    void paintOn(java.awt.Color ground) {
        editor.setBackground(ground);
    }

    /** Underlines the place that a message is about. */
    void underline(String message, String text) {
        editor.underline(message, text);
    }

    @Override
    void point(int from, int to) {
        pointed = true;
        settle();
        editor.select(from, to);
        editor.getCaret().setSelectionVisible(true);
    }

    @Override
    void pointNowhere() {
        pointed = false;
        editor.select(editor.getCaretPosition(), editor.getCaretPosition());
        settle();
    }

    @Override
    void edit() {
        if (getComponent(0) != editor) {
            removeAll();
            add(editor, BorderLayout.CENTER);
            revalidate();
        }
        awaitsKeys = editor.requestFocusInWindow();
    }

    @Override
    JComponent editor() {
        return editor;
    }

    @Override
    public int heightFor(int width) {
        return Heights.of(getComponent(0), width);
    }

    /** Selects the row when it is entered, runs what was typed when it is left. */
    private final class Leaving implements FocusListener {
        private final String id;

        private Leaving(String id) {
            this.id = id;
        }

        @Override
        public void focusGained(FocusEvent event) {
            awaitsKeys = false;
            bench.select(id);
        }

        @Override
        public void focusLost(FocusEvent event) {
            if (!event.isTemporary()) {
                settle();
                bench.commit();
            }
        }
    }
}
