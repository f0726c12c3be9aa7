package rakeline.shell;

import java.util.Locale;
import javax.swing.ButtonGroup;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JToggleButton;
import net.miginfocom.swing.MigLayout;
import rakeline.shell.look.Look;
import rakeline.shell.look.Words;
import rakeline.shell.page.Bench;
import rakeline.shell.page.Origin;
import rakeline.shell.page.PageModel;
import rakeline.worksheet.Worksheet;

/** The page's title, for whom it is, whether it is saved, and the few buttons that are always at hand. */
final class TitleBar extends JPanel implements Bench.View {
    private final JLabel title;
    private final JLabel about;
    private final JButton stop;
    private final JToggleButton write;
    private final JToggleButton read;
    private final JButton show;
    private final JToggleButton shelf;

    TitleBar(Look look, Bench bench, Runnable toggleShelf, Runnable showFigure) {
        super(new MigLayout("insets " + look.space(2) + " " + look.space(4) + " " + look.space(2) + " " + look.space(4)
                + ", gap 0, hidemode 3, fillx, nogrid"));
        title = Words.line("", look.title(), look.ink());
        about = Words.line("", look.softText(), look.soft());
        shelf = segment("Shelf", toggleShelf);
        JButton runAll = new JButton("Run all");
        runAll.addActionListener(event -> bench.runAll());
        stop = new JButton("Stop");
        stop.addActionListener(event -> bench.stop());
        write = view("Write", bench, Worksheet.View.WRITE);
        read = view("Read", bench, Worksheet.View.READ);
        show = new JButton("Show");
        show.addActionListener(event -> showFigure.run());
        ButtonGroup views = new ButtonGroup();
        views.add(write);
        views.add(read);
        title.setName("title");
        about.setName("about");
        stop.setName("stop");
        write.setName("write");
        read.setName("read");
        show.setName("show figure");
        runAll.setName("run all");
        setBackground(look.paper());
        setBorder(look.line(0, 0, 1, 0));
        add(shelf, "gapright " + look.space(3));
        add(names(look), "growx, pushx, wmin " + look.px(40));
        add(runAll, "gapleft " + look.space(4));
        add(stop, "gapleft " + look.space(2));
        add(views(), "gapleft " + look.space(4));
    }

    /** The keys of the views, side by side. */
    private JPanel views() {
        JPanel views = new JPanel(new MigLayout("insets 0, gap 0"));
        views.setOpaque(false);
        views.add(write, "sg view");
        views.add(read, "sg view");
        views.add(show, "sg view");
        return views;
    }

    private JPanel names(Look look) {
        JPanel names = new JPanel(new MigLayout("insets 0, fillx, nogrid, gap " + look.space(3)));
        names.setOpaque(false);
        names.add(title, "aligny baseline, shrinkprio 100, wmin 0");
        names.add(about, "gapleft " + look.space(2) + ", aligny baseline, shrinkprio 200, wmin 0");
        return names;
    }

    /** The arrow keys choose among the views too, and they press nothing. */
    private static JToggleButton view(String words, Bench bench, Worksheet.View view) {
        JToggleButton button = segment(words, () -> {});
        button.addItemListener(event -> {
            if (button.isSelected() && bench.model().view() != view) {
                bench.view(view);
            }
        });
        return button;
    }

    private static JToggleButton segment(String words, Runnable work) {
        JToggleButton button = new JToggleButton(words);
        button.addActionListener(event -> work.run());
        return button;
    }

    /** Shows the key that opens the shelf, and whether it is open. */
    void showShelfKey(boolean shown, boolean open) {
        shelf.setVisible(shown);
        shelf.setSelected(open);
    }

    @Override
    public void show(PageModel now) {
        title.setText(now.page().title());
        title.setToolTipText(now.origin().path().map(Object::toString).orElse(null));
        about.setText(about(now));
        stop.setEnabled(now.isRunning());
        write.setSelected(now.view() == Worksheet.View.WRITE);
        read.setSelected(now.view() == Worksheet.View.READ);
    }

    private static String about(PageModel now) {
        String whom = now.page()
                .audience()
                .map(audience -> "for the " + audience.name().toLowerCase(Locale.ROOT) + " · ")
                .orElse("");
        return whom + saved(now);
    }

    private static String saved(PageModel now) {
        boolean saved = now.isSaved();
        if (now.origin() instanceof Origin.Bundled) {
            return saved ? "bundled" : "bundled, changed: save a copy to keep it";
        }
        if (now.origin() instanceof Origin.New) {
            return "not saved yet";
        }
        return saved ? "saved" : "not saved";
    }
}
