package rakeline.shell;

import java.awt.BorderLayout;
import java.awt.Component;
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
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.ListCellRenderer;
import javax.swing.ListSelectionModel;
import rakeline.shell.look.Look;
import rakeline.shell.look.Words;
import rakeline.shell.page.Bench;
import rakeline.shell.page.Origin;
import rakeline.shell.page.PageModel;
import rakeline.worksheet.Worksheet.Audience;

/** Worksheets at hand: those that come with the program, by user, and the files opened last. */
final class Shelf extends JPanel implements Bench.View {
    /** What stands on the shelf. */
    sealed interface Item {
        record Heading(String words) implements Item {}

        record Bundled(BundledPages.Entry entry) implements Item {}

        record Recent(Path file) implements Item {}
    }

    private final transient Look look;
    private final DefaultListModel<Item> items = new DefaultListModel<>();
    private final JList<Item> list = new JList<>(items);
    private transient Origin shown = new Origin.New();

    Shelf(Look look, Consumer<Item> open) {
        super(new BorderLayout());
        this.look = look;
        list.setCellRenderer(new Cells());
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
        JScrollPane scroll = new JScrollPane(list);
        scroll.setBorder(null);
        setBackground(look.paper());
        setBorder(look.line(0, 0, 0, 1));
        add(scroll, BorderLayout.CENTER);
    }

    private void openSelected(Consumer<Item> open) {
        Optional.ofNullable(list.getSelectedValue())
                .filter(item -> !(item instanceof Item.Heading))
                .ifPresent(open);
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
        List<BundledPages.Entry> those =
                bundled.stream().filter(entry -> entry.audience().equals(audience)).toList();
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
        return new Dimension(look.px(200), super.getPreferredSize().height);
    }

    /** A heading in soft letters; a page with the accent at its left edge where it is the open one. */
    private final class Cells implements ListCellRenderer<Item> {
        @Override
        public Component getListCellRendererComponent(
                JList<? extends Item> list, Item item, int index, boolean isSelected, boolean hasFocus) {
            if (item instanceof Item.Heading heading) {
                JLabel label = Words.line(heading.words(), look.softStrong(), look.soft());
                label.setBorder(look.room(4, 4, 1, 2));
                return label;
            }
            return page(item, isSelected);
        }

        private Component page(Item item, boolean isSelected) {
            JLabel label = Words.line(words(item), look.body(), look.ink());
            label.setOpaque(true);
            label.setBackground(isSelected ? look.wash() : look.paper());
            label.setToolTipText(tip(item));
            label.setBorder(javax.swing.BorderFactory.createCompoundBorder(
                    javax.swing.BorderFactory.createMatteBorder(
                            0, look.px(3), 0, 0, isSelected ? look.accent() : look.paper()),
                    javax.swing.BorderFactory.createEmptyBorder(
                            look.px(5), look.px(13), look.px(5), look.px(8))));
            return label;
        }

        private static String words(Item item) {
            return item instanceof Item.Bundled bundled
                    ? bundled.entry().title()
                    : String.valueOf(((Item.Recent) item).file().getFileName());
        }

        private static String tip(Item item) {
            return item instanceof Item.Bundled bundled
                    ? bundled.entry().title()
                    : ((Item.Recent) item).file().toString();
        }
    }
}
