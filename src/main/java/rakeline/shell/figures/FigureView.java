package rakeline.shell.figures;

import java.awt.Color;
import java.awt.Component;
import java.awt.Container;
import java.awt.Cursor;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.swing.JPanel;
import javax.swing.JRootPane;
import javax.swing.ToolTipManager;
import rakeline.figure.Chart;
import rakeline.figure.Drawing;
import rakeline.figure.Figure;
import rakeline.figure.MapFigure;
import rakeline.figure.Table;
import rakeline.figure.paint.ChartPainter;
import rakeline.figure.paint.DrawingPainter;
import rakeline.figure.paint.FigurePainter;
import rakeline.figure.paint.Grip;
import rakeline.figure.paint.View;
import rakeline.quantity.Caution;
import rakeline.shell.look.Heights;
import rakeline.shell.look.Look;
import rakeline.shell.look.Words;

/** A figure on the window. A chart can be zoomed and read off, by pointer and by keys. */
public final class FigureView extends JPanel implements Heights.Flowing {
    /** What a painter leaves free around a figure, in pixels at scale 1. */
    private static final double MARGIN = 8;

    private static final int TALLEST_DRAWING = 420;

    /** How much of a figure that is not of now is covered, of 255. */
    private static final int VEIL = 165;

    private final transient Look look;
    private transient Optional<Figure> figure = Optional.empty();
    private transient Optional<FigurePainter> painter = Optional.empty();
    private transient View view = View.WHOLE;
    private double scale;
    private transient Color ground;
    private transient Optional<Rectangle2D> marked = Optional.empty();
    private final transient DrawingHand closer = new DrawingHand(this);
    private final transient GripHand gripping = new GripHand(this);
    private final transient GripKeys handle = new GripKeys(this, gripping);
    private boolean faded;
    private int measuredWidth = -1;
    private int measuredHeight;

    public FigureView(Look look) {
        super(null);
        this.look = look;
        scale = look.scale();
        ground = look.card();
        setOpaque(false);
        listen(new ChartHand(this));
        listen(closer);
        listen(new HeldHand(this));
        listen(gripping);
        ChartKeys.install(this);
        FigureMenu.install(this);
        ToolTipManager.sharedInstance().registerComponent(this);
        setFocusable(true);
    }

    private void listen(MouseAdapter hand) {
        addMouseListener(hand);
        addMouseMotionListener(hand);
        addMouseWheelListener(hand);
    }

    @Override
    public void addNotify() {
        super.addNotify();
        Pointing.of(this).ifPresent(pointing -> pointing.add(this));
    }

    @Override
    public void removeNotify() {
        Pointing.of(this).ifPresent(pointing -> pointing.remove(this));
        super.removeNotify();
    }

    /** The figure in other forms, to be copied or written. */
    public FigureCopies copies() {
        return new FigureCopies(this, look);
    }

    /** Looks closer or less close, by a factor about a place; about the middle where there is none. */
    void zoom(double factor, Optional<Point2D> about) {
        if (chart().isPresent()) {
            Zoom.by(
                    this,
                    1 / factor,
                    about.isPresent() ? OptionalDouble.of(about.get().getX()) : OptionalDouble.empty());
        } else if (isDrawing()) {
            closer.zoom(factor, about.orElseGet(() -> new Point2D.Double(getWidth() / 2.0, getHeight() / 2.0)));
        }
    }

    /** Looks at the whole again. */
    void whole() {
        look(View.WHOLE);
        closer.whole();
    }

    /** Where it could be taken hold of, if it were drawn anew. */
    List<Grip> grips() {
        if (painter.orElse(null) instanceof DrawingPainter drawing) {
            return drawing.grips(area()).stream().map(closer::seen).toList();
        }
        return chartPainter().flatMap(chart -> chart.grip(area(), view)).stream()
                .toList();
    }

    /** What it is drawn from: while this is the same, so is the drawing. */
    Object drawn() {
        return List.of(painter, getSize(), view, closer.sheet());
    }

    /** What the keys hold of it. */
    GripKeys handle() {
        return handle;
    }

    /** Whether a press takes hold of something. */
    boolean takes(MouseEvent event) {
        return gripping.takes(event);
    }

    boolean isDrawing() {
        return figure.filter(Drawing.class::isInstance).isPresent();
    }

    /** Says what is done in a window when a person wants something else held in a chart. */
    public static void whenAskedToHold(JRootPane window, Runnable work) {
        window.putClientProperty(HeldHand.class, work);
    }

    /** Why a measure has no value where the crosshair is. */
    @Override
    public String getToolTipText(MouseEvent event) {
        if (HeldHand.isOnHeld(this, event)) {
            return HeldHand.WORDS;
        }
        if (painter.filter(drawn -> drawn.cautionsArea(area()).contains(event.getPoint()))
                .isPresent()) {
            return Words.tip(cautions());
        }
        return chart().map(shown -> Gaps.at(shown, view.step()))
                .filter(reasons -> !reasons.isEmpty())
                .or(() -> gripping.words(event))
                .orElse(null);
    }

    /** Shows a figure; a chart of the same sweep stays zoomed as it is. */
    public void show(Figure next) {
        show(next, look.scale());
    }

    /** The scale at which a figure would be drawn in a view of a size: the look's, or less where it does not fit. */
    public double scaleOf(Figure next, int width, int height) {
        double around = 2 * MARGIN * look.scale();
        return FigurePainter.of(next, look.palette(), look.scale()).scaleIn(width + around, height + around);
    }

    /** The same at another scale, so that figures beside each other have one. */
    public void show(Figure next, double newScale) {
        if (figure.equals(Optional.of(next)) && scale == newScale) {
            return;
        }
        scale = newScale;
        if (!isSameSweep(next)) {
            view = View.WHOLE;
        }
        if (!isDrawing() || !(next instanceof Drawing)) {
            closer.whole();
        }
        figure = Optional.of(next);
        painter = Optional.of(painterOn(ground, next));
        measuredWidth = -1;
        describe(next);
        repaint();
    }

    private FigurePainter painterOn(Color colour, Figure next) {
        return FigurePainter.of(next, look.palette().on(colour), scale);
    }

    /** Words that stand across lines have the colour behind them that the figure stands on. */
    private void settle() {
        Color now = Stream.iterate(getParent(), each -> each != null, Container::getParent)
                .filter(Component::isOpaque)
                .map(Component::getBackground)
                .findFirst()
                .orElse(ground);
        if (!now.equals(ground)) {
            ground = now;
            painter = figure.map(shown -> painterOn(now, shown));
        }
    }

    private boolean isSameSweep(Figure next) {
        return next instanceof Chart chart
                && figure.filter(Chart.class::isInstance)
                        .map(before -> ((Chart) before).steps().equals(chart.steps()))
                        .orElse(false);
    }

    private void describe(Figure next) {
        boolean chart = next instanceof Chart;
        String kind = kind(next);
        getAccessibleContext().setAccessibleDescription(cautions());
        getAccessibleContext().setAccessibleName(next.title().isEmpty() ? kind : kind + ": " + next.title());
        setCursor(Cursor.getPredefinedCursor(chart ? Cursor.CROSSHAIR_CURSOR : Cursor.DEFAULT_CURSOR));
    }

    /** All cautions in full, those too that stand as a word. */
    private String cautions() {
        return figure.stream()
                .flatMap(shown -> shown.cautions().stream())
                .map(Caution::sentence)
                .collect(Collectors.joining("\n"));
    }

    private static String kind(Figure figure) {
        if (figure instanceof Chart) {
            return "Chart";
        }
        if (figure instanceof MapFigure) {
            return "Map";
        }
        return figure instanceof Table ? "Table" : "Drawing";
    }

    /** Fades what is not of now; the words that say so are its owner's. */
    public void fade(boolean old) {
        if (old != faded) {
            faded = old;
            repaint();
        }
    }

    public boolean isFaded() {
        return faded;
    }

    /** The figure shown. */
    public Optional<Figure> figure() {
        return figure;
    }

    /** What of the chart is looked at. */
    public View view() {
        return view;
    }

    Optional<Chart> chart() {
        return figure.filter(Chart.class::isInstance).map(Chart.class::cast);
    }

    Optional<ChartPainter> chartPainter() {
        return painter.filter(ChartPainter.class::isInstance).map(ChartPainter.class::cast);
    }

    /** Where the painter draws: its margin lies outside, so that the figure lines up with the text around it. */
    Rectangle2D area() {
        double margin = margin();
        return new Rectangle2D.Double(-margin, -margin, getWidth() + 2 * margin, getHeight() + 2 * margin);
    }

    private double margin() {
        return MARGIN * scale;
    }

    /** Looks at another part, or points at another step; charts of the same quantity point there too. */
    void look(View next) {
        boolean points = next.step() != view.step();
        follow(next);
        if (points) {
            Pointing.of(this).ifPresent(pointing -> pointing.point(this));
        }
    }

    /** Looks at another part without telling others. */
    void follow(View next) {
        if (!next.equals(view)) {
            view = next;
            chartPainter()
                    .filter(some -> next.step() >= 0)
                    .ifPresent(some -> getAccessibleContext()
                            .setAccessibleDescription(String.join(", ", some.readout(next.step()))));
            repaint();
        }
    }

    /** Marks the stretch that a drag is about to zoom into; none when it is over. */
    void mark(Optional<Rectangle2D> stretch) {
        marked = stretch;
        repaint();
    }

    @Override
    public int heightFor(int width) {
        if (width != measuredWidth) {
            measuredWidth = width;
            measuredHeight = painter.map(some -> wantedHeight(some, width)).orElse(0);
        }
        return measuredHeight;
    }

    /** A drawing fits whatever it is given, so it need not fill a screen. */
    private int wantedHeight(FigurePainter some, int width) {
        int height = (int) Math.ceil(some.preferredSize(width + 2 * margin()).height - 2 * margin());
        boolean drawing = figure.filter(Drawing.class::isInstance).isPresent();
        return drawing ? Math.min(height, look.px(TALLEST_DRAWING)) : height;
    }

    @Override
    public Dimension getPreferredSize() {
        int width = getWidth() > 0 ? getWidth() : look.px(480);
        return new Dimension(width, heightFor(width));
    }

    @Override
    protected void paintComponent(Graphics g) {
        settle();
        Graphics2D pen = (Graphics2D) g.create();
        marked.ifPresent(stretch -> {
            pen.setColor(look.wash());
            pen.fill(stretch);
        });
        painter.ifPresent(some -> draw(some, (Graphics2D) pen.create()));
        gripping.draw(pen, look, handle.taken());
        if (faded) {
            pen.setColor(new Color(ground.getRed(), ground.getGreen(), ground.getBlue(), VEIL));
            pen.fillRect(0, 0, getWidth(), getHeight());
        }
        if (isFocusOwner()) {
            pen.setColor(look.edge());
            pen.drawRect(0, 0, getWidth() - 1, getHeight() - 1);
        }
        pen.dispose();
    }

    private void draw(FigurePainter some, Graphics2D pen) {
        if (some instanceof ChartPainter chart) {
            chart.draw(pen, area(), view);
        } else {
            closer.apply(pen);
            some.draw(pen, area());
        }
    }

    /** The figure as a picture, twice as fine as on the window. */
    public BufferedImage picture() {
        BufferedImage picture = new BufferedImage(
                2 * Math.max(1, getWidth()), 2 * Math.max(1, getHeight()), BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = picture.createGraphics();
        pen.setColor(look.card());
        pen.fillRect(0, 0, picture.getWidth(), picture.getHeight());
        pen.scale(2, 2);
        figure.ifPresent(shown -> draw(painterOn(look.card(), shown), pen));
        pen.dispose();
        return picture;
    }
}
