package rakeline.shell.show;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.GraphicsConfiguration;
import java.awt.Rectangle;
import java.awt.event.ActionEvent;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import javax.swing.AbstractAction;
import javax.swing.JComponent;
import javax.swing.JFrame;
import javax.swing.JLayer;
import javax.swing.KeyStroke;
import javax.swing.WindowConstants;
import rakeline.figure.Figure;
import rakeline.figure.paint.Palette;
import rakeline.shell.look.Emblem;
import rakeline.shell.look.Look;
import rakeline.shell.page.Bench;
import rakeline.shell.page.PageModel;

/**
 * Fills a screen with one figure of the page at a time, its type at least 1/30 of the screen's height. To be used on the
 * event thread.
 */
public final class Show implements Bench.View {
    /** The part of the screen's height that the smallest letters take. */
    private static final double LETTERS = 1 / 30.0;

    /** The size of the smallest letters at scale 1, in pixels. */
    private static final double SMALLEST = 12;

    private final JFrame frame;
    private final Bench bench;
    private final Palette usual;
    private final Runnable closed;
    private final Consumer<Component> keys;
    private boolean contrast;
    private Sheet sheet;
    private Pointer pointer;
    private JLayer<JComponent> layer;
    private Optional<String> row;
    private int part;
    private List<Figure> parts = List.of();

    /**
     * @param usual the colours preferred
     * @param closed called once the screen is given back
     * @param keys lists the keys over what is shown
     */
    private Show(Bench bench, Palette usual, GraphicsConfiguration screen, Runnable closed, Consumer<Component> keys) {
        this.bench = bench;
        this.usual = usual;
        this.closed = closed;
        this.keys = keys;
        contrast = usual.equals(Palette.CONTRAST);
        row = bench.model().selected();
        frame = new JFrame("Rakeline – Show", screen);
        frame.setName("show");
        frame.setIconImages(Emblem.all());
        frame.setUndecorated(true);
        frame.setDefaultCloseOperation(WindowConstants.DO_NOTHING_ON_CLOSE);
    }

    /**
     * Shows a page's figures on a screen, beginning with the selected row's.
     *
     * @param keys lists the keys over a part of the screen
     */
    public static Show on(
            GraphicsConfiguration screen, Bench bench, Palette usual, Runnable closed, Consumer<Component> keys) {
        Show show = new Show(bench, usual, screen, closed, keys);
        show.open(screen.getBounds());
        return show;
    }

    private void open(Rectangle bounds) {
        frame.setBounds(bounds);
        build();
        frame.addComponentListener(new ComponentAdapter() {
            @Override
            public void componentResized(ComponentEvent event) {
                rebuild();
            }
        });
        bench.watch(this);
        frame.setVisible(true);
        fill(Optional.of(frame));
        sheet.first().requestFocusInWindow();
    }

    /** Takes the whole screen where the platform can, menu bars and docks included; gives it back for none. */
    private void fill(Optional<JFrame> window) {
        var device = frame.getGraphicsConfiguration().getDevice();
        if (device.isFullScreenSupported()) {
            device.setFullScreenWindow(window.orElse(null));
        }
    }

    private void build() {
        Look look = new Look(
                contrast ? Palette.CONTRAST : usual, Math.max(1, Math.ceil(frame.getHeight() * LETTERS) / SMALLEST));
        sheet = new Sheet(look, bench);
        sheet.setSize(frame.getSize());
        pointer = new Pointer(look);
        layer = new JLayer<>(sheet, pointer);
        frame.getContentPane().removeAll();
        frame.getContentPane().add(layer, BorderLayout.CENTER);
        frame.getContentPane().setBackground(look.paper());
        bindKeys();
    }

    private void rebuild() {
        build();
        show(bench.model());
        frame.revalidate();
        frame.repaint();
        sheet.first().requestFocusInWindow();
    }

    private void bindKeys() {
        bind(() -> step(1), "RIGHT", "PAGE_DOWN", "SPACE");
        bind(() -> step(-1), "LEFT", "PAGE_UP");
        bind(() -> goTo(0), "HOME");
        bind(() -> goTo(Shown.on(bench.model()).size() - 1), "END");
        bind(this::turnBeside, "D");
        bind(() -> pointer.toggle(layer), "P");
        bind(this::turnContrast, "H");
        bind(this::turnAnswer, "A");
        bind(this::turnCautions, "C");
        bind(() -> keys.accept(sheet), "F1");
        bind(this::close, "ESCAPE");
    }

    private void bind(Runnable work, String... keys) {
        for (String key : keys) {
            KeyStroke stroke = KeyStroke.getKeyStroke(key);
            sheet.getInputMap(JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(stroke, key);
            sheet.getActionMap().put(key, new AbstractAction() {
                @Override
                public void actionPerformed(ActionEvent event) {
                    work.run();
                }
            });
        }
    }

    @Override
    public void show(PageModel now) {
        List<Shown> all = Shown.on(now);
        if (all.isEmpty()) {
            parts = List.of();
            sheet.showNone(now);
        } else {
            show(now, all, Shown.at(all, now, row));
        }
    }

    private void show(PageModel now, List<Shown> all, int place) {
        Shown shown = all.get(place);
        row = Optional.of(shown.row());
        parts = sheet.parts(now, shown);
        part = Math.max(0, Math.min(part, parts.size() - 1));
        String which = parts.size() > 1 ? ", part " + (part + 1) : "";
        bench.look(Set.of(shown.row()));
        sheet.show(shown, parts.get(part), (place + 1) + " of " + all.size() + which);
    }

    /** To the next part of the figure, or the next figure; the end is the end. */
    private void step(int by) {
        int next = part + by;
        if (next >= 0 && next < parts.size()) {
            part = next;
            show(bench.model());
            return;
        }
        List<Shown> all = Shown.on(bench.model());
        int place = Shown.at(all, bench.model(), row) + by;
        if (place >= 0 && place < all.size()) {
            row = Optional.of(all.get(place).row());
            part = by > 0 ? 0 : Integer.MAX_VALUE;
            show(bench.model());
        }
    }

    private void goTo(int place) {
        List<Shown> all = Shown.on(bench.model());
        if (!all.isEmpty()) {
            row = Optional.of(all.get(place).row());
            part = 0;
            show(bench.model());
        }
    }

    private void turnBeside() {
        PageModel now = bench.model();
        List<Shown> all = Shown.on(now);
        if (!all.isEmpty()) {
            sheet.turnBeside(now, all.get(Shown.at(all, now, row)));
            show(now);
        }
    }

    /** Opens the answer at hand, or closes it again. */
    private void turnAnswer() {
        row.ifPresent(bench::turnAnswer);
    }

    private void turnCautions() {
        sheet.turnCautions();
        show(bench.model());
    }

    private void turnContrast() {
        contrast = !contrast;
        rebuild();
    }

    /** Gives the screen back; the figure shown last is then the selected row's. */
    public void close() {
        bench.unwatch(this);
        fill(Optional.empty());
        frame.dispose();
        row.filter(id -> bench.model().page().row(id).isPresent()).ifPresent(bench::select);
        closed.run();
    }

    /** Brings it to the front. */
    public void toFront() {
        frame.toFront();
        sheet.first().requestFocusInWindow();
    }
}
