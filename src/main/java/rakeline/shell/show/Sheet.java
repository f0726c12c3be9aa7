package rakeline.shell.show;

import java.awt.Component;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import javax.swing.SwingConstants;
import rakeline.figure.Drawing;
import rakeline.figure.Figure;
import rakeline.figure.Table;
import rakeline.figure.paint.FigurePainter;
import rakeline.shell.dials.DialStrip;
import rakeline.shell.figures.FigureView;
import rakeline.shell.look.Heights;
import rakeline.shell.look.Look;
import rakeline.shell.look.Words;
import rakeline.shell.page.Bench;
import rakeline.shell.page.Beside;
import rakeline.shell.page.PageModel;

/** One figure, the drawing beside it, what was held beneath them, the dials at the foot. */
final class Sheet extends JPanel {
    private static final double FIGURES_SHARE = 0.62;

    /** The width of a drawing, in pixels at scale 1, that leaves no room for dimensions. */
    private static final int NARROW = 330;

    /** The share of the height that a figure has at least, if one line of dials instead of two gives it that. */
    private static final double AMPLE = 0.6;

    /** The share of the height below which there is no room for a drawing beside a figure. */
    private static final double LOW = 0.44;

    /** How much higher a table may become for a drawing beside it. */
    private static final double BROKEN = 1.3;

    /** Between figure and drawing, in spacing units. */
    private static final int BETWEEN = 4;

    private final transient Look look;
    private final FigureView figure;
    private final FigureView drawing;
    private final JTextArea words;
    private final JTextArea cautions;
    private final JLabel place;
    private final DialStrip strip;
    private int beside;
    private boolean heldApart;
    private boolean inFull;
    private transient Optional<Drawing> drawn = Optional.empty();

    Sheet(Look look, Bench bench) {
        super(null);
        this.look = look;
        figure = still(new FigureView(look), "shown figure");
        drawing = still(new FigureView(look), "shown drawing");
        words = Words.paragraph("", look.softText(), look.ink());
        cautions = Words.paragraph("", look.softStrong(), look.caution());
        cautions.setName("shown cautions");
        place = Words.line("", look.softText(), look.soft());
        place.setHorizontalAlignment(SwingConstants.RIGHT);
        strip = DialStrip.large(look, bench);
        words.setName("shown words");
        place.setName("shown place");
        setBackground(look.paper());
        setFocusable(true);
        getAccessibleContext().setAccessibleName("Figure shown");
        List.of(figure, drawing, words, cautions, place, strip).forEach(this::add);
    }

    private static FigureView still(FigureView view, String name) {
        view.setFocusable(false);
        view.setName(name);
        return view;
    }

    /** The first dial, or the sheet itself where there is none. */
    Component first() {
        return strip.first().orElse(this);
    }

    /** Shows another drawing beside the figure, and after the last one none. */
    void turnBeside(PageModel now, Shown shown) {
        beside = (beside + 1) % (drawings(now, shown).size() + 1);
    }

    private static List<Drawing> drawings(PageModel now, Shown shown) {
        Map<String, Drawing> all = Beside.figure(now, shown.row());
        return shown.hidden() || shown.figure() instanceof Drawing ? List.of() : List.copyOf(all.values());
    }

    /** Shows the controls of the page, and no figure where it has none. */
    void showNone(PageModel now) {
        strip.show(now);
        strip.inSight(2);
        figure.setVisible(false);
        drawing.setVisible(false);
        words.setText("This page has no figure yet.");
        cautions.setText("");
        place.setText("");
        revalidate();
    }

    /** Prepares the room for a row's figure, and says into which parts it falls there. */
    List<Figure> parts(PageModel now, Shown shown) {
        strip.show(now);
        List<Drawing> drawings = drawings(now, shown);
        drawn = drawings.stream().skip(beside).findFirst();
        drawing.setVisible(drawn.isPresent());
        fitWords(shown);
        if (drawn.isPresent() && !hasRoomBeside(shown.figure())) {
            drawn = Optional.empty();
            drawing.setVisible(false);
        }
        List<Figure> parts = new Parts(look, area().figureWidth(), part -> heightAbove(shown, part)).of(shown.figure());
        return heldApart
                ? Stream.concat(parts.stream(), Stream.of(shown.heldPart())).toList()
                : parts;
    }

    /** What is left above the words that belong to a part. */
    private int heightAbove(Shown shown, Figure part) {
        say(shown, part);
        return area().height();
    }

    private void say(Shown shown, Figure part) {
        words.setText(shown.words(!heldApart));
        cautions.setText(shown.cautions(part, inFull));
    }

    /** Says all cautions in full, or those said before in a word again. */
    void turnCautions() {
        inFull = !inFull;
    }

    /** What was held is a part of its own where, with the cautions, it left too little of the screen. */
    private void fitWords(Shown shown) {
        words.setText(shown.words(true));
        cautions.setText(shown.cautions(inFull));
        fitStrip();
        heldApart = area().height() < LOW * getHeight() && shown.holds();
        if (heldApart) {
            words.setText(shown.words(false));
            fitStrip();
        }
    }

    private void fitStrip() {
        strip.inSight(2);
        if (area().height() < AMPLE * getHeight()) {
            strip.inSight(1);
        }
    }

    /** Not where little height is left, nor beside a table that would break for it. */
    private boolean hasRoomBeside(Figure shown) {
        Area area = area();
        boolean breaks =
                shown instanceof Table && heightOf(shown, area.figureWidth()) > BROKEN * heightOf(shown, area.width());
        return area.height() >= LOW * getHeight() && !breaks;
    }

    private int heightOf(Figure shown, int width) {
        return FigurePainter.of(Sliced.bare(shown), look.palette(), look.scale())
                .preferredSize(width)
                .height;
    }

    /** Shows one part; what was held as words alone. */
    void show(Shown shown, Figure part, String where) {
        boolean alone = heldApart && part.equals(shown.heldPart());
        figure.setVisible(!alone && !shown.hidden());
        drawing.setVisible(!alone && drawn.isPresent());
        if (alone) {
            words.setText(shown.held());
            cautions.setText("");
        } else {
            say(shown, part);
            showFigure(part);
        }
        figure.fade(shown.old());
        place.setText(where);
        revalidate();
        repaint();
    }

    private void showFigure(Figure part) {
        Area area = area();
        double scale = figure.scaleOf(part, area.figureWidth(), area.height());
        figure.show(part, scale);
        drawn.ifPresent(some -> drawing.show(Sliced.about(some, part, isRoomy()), scale));
    }

    /** Whether all dimensions find room around a drawing beside the figure. */
    private boolean isRoomy() {
        return (1 - FIGURES_SHARE) * getWidth() > look.px(NARROW);
    }

    private record Area(int x, int y, int width, int height, int figureWidth) {}

    private Area area() {
        int margin = look.space(4);
        int width = Math.max(1, getWidth() - 2 * margin);
        int foot = stripHeight() + wordsHeight(width) + look.space(3);
        int height = Math.max(1, getHeight() - margin - foot);
        int figureWidth = drawing.isVisible() ? (int) Math.round(FIGURES_SHARE * width) : width;
        return new Area(margin, margin, width, height, figureWidth);
    }

    private int stripHeight() {
        strip.setSize(getWidth(), strip.getHeight());
        return strip.isVisible() ? strip.getPreferredSize().height : look.space(2);
    }

    private int wordsHeight(int width) {
        int line = place.getPreferredSize().height;
        return Math.max(line, high(words, width) + high(cautions, width));
    }

    private int high(JTextArea paragraph, int width) {
        return paragraph.getText().isEmpty() ? 0 : Heights.of(paragraph, width - placeWidth());
    }

    private int placeWidth() {
        return look.px(96);
    }

    @Override
    public void doLayout() {
        Area area = area();
        figure.setBounds(area.x(), area.y(), area.figureWidth(), area.height());
        int beyond = area.x() + area.figureWidth() + look.space(BETWEEN);
        drawing.setBounds(beyond, area.y(), Math.max(1, area.x() + area.width() - beyond), area.height());
        int foot = area.y() + area.height() + look.space(1);
        int high = wordsHeight(area.width());
        int said = high(words, area.width());
        words.setBounds(area.x(), foot, area.width() - placeWidth(), said);
        cautions.setBounds(area.x(), foot + said, area.width() - placeWidth(), high(cautions, area.width()));
        int line = place.getPreferredSize().height;
        place.setBounds(area.x() + area.width() - placeWidth(), foot + high - line, placeWidth(), line);
        strip.setBounds(0, getHeight() - stripHeight(), getWidth(), stripHeight());
    }
}
