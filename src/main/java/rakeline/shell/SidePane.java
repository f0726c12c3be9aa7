package rakeline.shell;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Dimension;
import java.util.LinkedHashMap;
import java.util.Map;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.ScrollPaneConstants;
import rakeline.engine.State;
import rakeline.figure.Drawing;
import rakeline.shell.figures.FigureView;
import rakeline.shell.look.Look;
import rakeline.shell.look.Pile;
import rakeline.shell.look.Scrolled;
import rakeline.shell.look.Words;
import rakeline.shell.page.Bench;
import rakeline.shell.page.Beside;
import rakeline.shell.page.PageModel;

/** The drawings of the bike at hand. */
final class SidePane extends JPanel implements Bench.View {
    private final transient Look look;
    private final transient Map<String, FigureView> views = new LinkedHashMap<>();
    private final JTextArea none;
    private final JTextArea age;
    private final Pile pile;

    SidePane(Look look) {
        super(new BorderLayout());
        this.look = look;
        pile = new Pile(look.space(2));
        pile.setBorder(look.room(4, 4, 4, 4));
        none = Words.paragraph(
                "No bike on this page yet. A row that ends in a bike, or in a drawing as in draw(it), shows it here.",
                look.softText(),
                look.soft());
        age = Words.paragraph(Words.ofBefore(State.OUT_OF_DATE.words()), look.softText(), look.ink());
        JScrollPane scroll = new JScrollPane(
                new Scrolled(look, pile),
                ScrollPaneConstants.VERTICAL_SCROLLBAR_AS_NEEDED,
                ScrollPaneConstants.HORIZONTAL_SCROLLBAR_NEVER);
        scroll.setBorder(null);
        scroll.getViewport().setBackground(look.paper());
        scroll.getVerticalScrollBar().setUnitIncrement(look.space(8));
        setBackground(look.paper());
        setBorder(look.line(0, 1, 0, 0));
        getAccessibleContext().setAccessibleName("Drawing");
        add(scroll, BorderLayout.CENTER);
    }

    @Override
    public void show(PageModel now) {
        Map<String, Drawing> wanted = Beside.of(now);
        if (!views.keySet().equals(wanted.keySet()) || pile.getComponentCount() == 0) {
            rebuild(wanted);
        }
        wanted.forEach((kind, drawing) -> {
            views.get(kind).show(drawing);
            views.get(kind).fade(Beside.isOld(now, drawing));
        });
        age.setVisible(views.values().stream().anyMatch(FigureView::isFaded));
        revalidate();
    }

    private void rebuild(Map<String, Drawing> wanted) {
        views.clear();
        pile.removeAll();
        wanted.keySet().forEach(kind -> {
            FigureView view = new FigureView(look);
            views.put(kind, view);
            pile.add(view);
        });
        pile.add(wanted.isEmpty() ? none : age);
        repaint();
    }

    /** Goes to the first drawing, or stays where it is while there is none. */
    void enter() {
        views.values().stream().findFirst().ifPresent(Component::requestFocusInWindow);
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(look.px(460), super.getPreferredSize().height);
    }
}
