package rakeline.shell;

import java.awt.BorderLayout;
import java.awt.Dimension;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.ScrollPaneConstants;
import rakeline.engine.Result;
import rakeline.figure.Drawing;
import rakeline.shell.figures.FigureView;
import rakeline.shell.look.Look;
import rakeline.shell.look.Words;
import rakeline.shell.page.Bench;
import rakeline.shell.page.PageModel;
import rakeline.worksheet.Row;

/** The drawings of the bike at hand: for each kind, the last at or above the selected row. */
final class SidePane extends JPanel implements Bench.View {
    private final transient Look look;
    private final transient Map<String, FigureView> views = new LinkedHashMap<>();
    private final JTextArea none;
    private final SidePile pile;

    SidePane(Look look) {
        super(new BorderLayout());
        this.look = look;
        pile = new SidePile(look);
        none = Words.paragraph(
                "No bike on this page yet. A row that ends in a bike, or in a drawing as in draw(it), shows it here.",
                look.softText(),
                look.soft());
        JScrollPane scroll = new JScrollPane(
                pile, ScrollPaneConstants.VERTICAL_SCROLLBAR_AS_NEEDED, ScrollPaneConstants.HORIZONTAL_SCROLLBAR_NEVER);
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
        Map<String, Drawing> wanted = drawings(now);
        if (!views.keySet().equals(wanted.keySet()) || pile.getComponentCount() == 0) {
            rebuild(wanted);
        }
        wanted.forEach((kind, drawing) -> views.get(kind).show(drawing));
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
        if (wanted.isEmpty()) {
            pile.add(none);
        }
        repaint();
    }

    /** By kind; the last one above counts, and where none is above, the first one below. */
    private static Map<String, Drawing> drawings(PageModel now) {
        Map<String, Drawing> found = new LinkedHashMap<>();
        int end = now.selected().map(id -> upTo(now, id)).orElse(now.rows().size());
        now.rows().subList(0, end).stream()
                .flatMap(row -> drawing(now, row))
                .forEach(drawing -> found.put(drawing.kind(), drawing));
        now.rows().subList(end, now.rows().size()).stream()
                .flatMap(row -> drawing(now, row))
                .forEach(drawing -> found.putIfAbsent(drawing.kind(), drawing));
        return found;
    }

    private static int upTo(PageModel now, String id) {
        List<String> ids = now.rows().stream().map(Row::id).toList();
        return Math.max(0, ids.indexOf(id)) + 1;
    }

    private static Stream<Drawing> drawing(PageModel now, Row row) {
        Optional<Result> result = now.standing(row.id()).result();
        return result.stream().flatMap(SidePane::drawings);
    }

    private static Stream<Drawing> drawings(Result result) {
        if (result instanceof Result.Value value) {
            return value.drawings().stream();
        }
        return result instanceof Result.Shown shown && shown.figure() instanceof Drawing drawing
                ? Stream.of(drawing)
                : Stream.empty();
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(look.px(460), super.getPreferredSize().height);
    }
}
