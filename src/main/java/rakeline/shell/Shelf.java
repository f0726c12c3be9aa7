package rakeline.shell;

import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.event.KeyAdapter;
import java.awt.event.KeyEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.DefaultListModel;
import javax.swing.DefaultListSelectionModel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.ListSelectionModel;
import javax.swing.ScrollPaneConstants;
import javax.swing.SwingUtilities;
import rakeline.shell.look.Look;
import rakeline.shell.look.WideList;
import rakeline.shell.page.Bench;
import rakeline.shell.page.Origin;
import rakeline.shell.page.PageModel;
import rakeline.worksheet.Worksheet.Audience;

/** Worksheets at hand: those that come with the program, by user, and the files opened last. */
final class Shelf extends JPanel implements Bench.View {
    /** What stands on the shelf. */
    sealed interface Item {
        record Heading(String words) implements Item {
            @Override
            public String toString() {
                return words;
            }
        }

        record Bundled(BundledPages.Entry entry) implements Item {
            @Override
            public String toString() {
                return entry.title();
            }
        }

        record Recent(Path file) implements Item {
            @Override
            public String toString() {
                return String.valueOf(file.getFileName());
            }
        }
    }

    /** In pixels at scale 1. */
    private static final int WIDTH = 212;

    private final transient Look look;
    private final DefaultListModel<Item> items = new DefaultListModel<>();
    private final JList<Item> list = new WideList<>(items);
    private transient Origin shown = new Origin.New();

    Shelf(Look look, Consumer<Item> open) {
        super(new BorderLayout());
        this.look = look;
        list.setCellRenderer(new ShelfCells(look, WIDTH));
        list.setSelectionModel(new PastHeadings());
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.setBackground(look.paper());
        list.getAccessibleContext().setAccessibleName("Shelf of worksheets");
        list.addMouseListener(new MouseAdapter() {
            @Override
            public void mouseClicked(MouseEvent event) {
                openSelected(open);
            }
        });
        list.addKeyListener(new KeyAdapter() {
            @Override
            public void keyPressed(KeyEvent event) {
                if (event.getKeyCode() == KeyEvent.VK_ENTER) {
                    openSelected(open);
                }
            }
        });
        JScrollPane scroll = new JScrollPane(
                list, ScrollPaneConstants.VERTICAL_SCROLLBAR_AS_NEEDED, ScrollPaneConstants.HORIZONTAL_SCROLLBAR_NEVER);
        scroll.setBorder(null);
        setBackground(look.paper());
        setBorder(look.line(0, 0, 0, 1));
        add(scroll, BorderLayout.CENTER);
    }

    /** What is marked is the page that is open, also where another was asked for and not opened. */
    private void openSelected(Consumer<Item> open) {
        Optional.ofNullable(list.getSelectedValue())
                .filter(item -> !(item instanceof Item.Heading))
                .ifPresent(open);
        select();
    }

    /** Puts these on the shelf. */
    void put(List<BundledPages.Entry> bundled, List<Path> recent) {
        items.clear();
        items.addAll(items(bundled, recent));
        select();
    }

    private static List<Item> items(List<BundledPages.Entry> bundled, List<Path> recent) {
        List<Item> all = new ArrayList<>();
        group(all, "Start here", bundled, Optional.empty());
        group(all, "Educator", bundled, Optional.of(Audience.EDUCATOR));
        group(all, "Fitter", bundled, Optional.of(Audience.FITTER));
        group(all, "Student", bundled, Optional.of(Audience.STUDENT));
        if (!recent.isEmpty()) {
            all.add(new Item.Heading("Recent"));
            recent.forEach(file -> all.add(new Item.Recent(file)));
        }
        return all;
    }

    private static void group(
            List<Item> all, String heading, List<BundledPages.Entry> bundled, Optional<Audience> audience) {
        List<BundledPages.Entry> those = bundled.stream()
                .filter(entry -> entry.audience().equals(audience))
                .toList();
        if (!those.isEmpty()) {
            all.add(new Item.Heading(heading));
            those.forEach(entry -> all.add(new Item.Bundled(entry)));
        }
    }

    @Override
    public void show(PageModel now) {
        if (!now.origin().equals(shown)) {
            shown = now.origin();
            select();
        }
    }

    private void select() {
        list.clearSelection();
        for (int i = 0; i < items.size(); i++) {
            if (isOpen(items.get(i))) {
                list.setSelectedIndex(i);
            }
        }
    }

    private boolean isOpen(Item item) {
        if (item instanceof Item.Bundled bundled) {
            return shown.equals(new Origin.Bundled(bundled.entry().name()));
        }
        return item instanceof Item.Recent recent && shown.path().equals(Optional.of(recent.file()));
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(look.px(WIDTH), super.getPreferredSize().height);
    }

    /** Goes to the list, at the page that is open or else the first. */
    void enter() {
        if (list.isSelectionEmpty()) {
            list.setSelectedIndex(0);
        }
        list.requestFocusInWindow();
        SwingUtilities.invokeLater(this::bringIntoSight);
    }

    /** As near to the top as it can be; once there is room, which a shelf just opened does not have yet. */
    private void bringIntoSight() {
        list.ensureIndexIsVisible(0);
        list.ensureIndexIsVisible(list.getSelectedIndex());
    }

    /** Steps over headings, in the direction of the step. */
    private final class PastHeadings extends DefaultListSelectionModel {
        @Override
        public void setSelectionInterval(int from, int to) {
            int place = isHeading(to) ? besides(to) : to;
            super.setSelectionInterval(place, place);
        }

        private int besides(int heading) {
            boolean up = getLeadSelectionIndex() > heading && heading > 0;
            return up ? heading - 1 : heading + 1;
        }

        private boolean isHeading(int place) {
            return place >= 0 && place + 1 < items.size() && items.get(place) instanceof Item.Heading;
        }
    }
}
