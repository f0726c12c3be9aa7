package rakeline.figure.paint;

import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.font.FontRenderContext;
import java.awt.font.LineBreakMeasurer;
import java.awt.font.TextAttribute;
import java.awt.geom.Rectangle2D;
import java.text.AttributedString;
import java.text.BreakIterator;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import rakeline.figure.PlainText;

/** The few kinds of text on a figure: how large, how wide, broken into lines, drawn. Sizes are px at scale 1. */
record Lettering(Typefaces face, double size) {
    static final Lettering TITLE = new Lettering(Typefaces.STRONG, 15);
    static final Lettering STRONG = new Lettering(Typefaces.STRONG, 12);
    static final Lettering SMALL = new Lettering(Typefaces.TEXT, 12);
    static final Lettering FIGURES = new Lettering(Typefaces.FIGURES, 12);

    /** How much wider strong words may come out in a reader without our typefaces. */
    static final double WIDER = 1.07;

    private static final FontRenderContext MEASURED = new FontRenderContext(null, true, true);
    private static final String MORE = "…";

    double lineHeight() {
        return Math.rint(1.36 * size);
    }

    double width(String words) {
        return words.isEmpty()
                ? 0
                : font(words).getStringBounds(words, MEASURED).getWidth();
    }

    /** The widest of several, 0 for none. */
    double width(List<String> lines) {
        return lines.stream().mapToDouble(this::width).max().orElse(0);
    }

    double height(List<String> lines) {
        return lines.size() * lineHeight();
    }

    /** The words in lines no wider than that; a word that is too long by itself is broken. */
    List<String> lines(String words, double width) {
        String plain = PlainText.oneLine(words).strip();
        if (plain.isEmpty()) {
            return List.of();
        }
        return width(plain) <= width ? List.of(plain) : broken(plain, width);
    }

    /** The same, at most so many lines; what is left out shows as dots. */
    List<String> lines(String words, double width, int most) {
        List<String> all = lines(words, width);
        if (all.size() <= most) {
            return all;
        }
        List<String> kept = new ArrayList<>(all.subList(0, most));
        kept.set(most - 1, shortened(kept.get(most - 1), width));
        return List.copyOf(kept);
    }

    /** Draws one line from its left end; y is its upper edge. */
    void draw(Graphics2D pen, Color colour, String words, double x, double y) {
        pen.setFont(font(words));
        pen.setColor(colour);
        pen.drawString(words, (float) x, (float) (y + baseline()));
    }

    void drawCentred(Graphics2D pen, Color colour, String words, double x, double y) {
        draw(pen, colour, words, x - width(words) / 2, y);
    }

    void drawToLeft(Graphics2D pen, Color colour, String words, double right, double y) {
        draw(pen, colour, words, right - width(words), y);
    }

    /** Draws lines under one another; returns the lower edge. */
    double draw(Graphics2D pen, Color colour, List<String> lines, double x, double y) {
        double top = y;
        for (String line : lines) {
            draw(pen, colour, line, x, top);
            top += lineHeight();
        }
        return top;
    }

    /** The box of one line whose upper left corner is there. */
    Rectangle2D.Double box(String words, double x, double y) {
        return new Rectangle2D.Double(x, y, width(words), lineHeight());
    }

    private double baseline() {
        return (lineHeight() + 0.72 * size) / 2;
    }

    private Font font(String words) {
        return face.showing(words, size);
    }

    private List<String> broken(String words, double width) {
        AttributedString text = new AttributedString(words);
        text.addAttribute(TextAttribute.FONT, font(words));
        LineBreakMeasurer measurer =
                new LineBreakMeasurer(text.getIterator(), BreakIterator.getLineInstance(Locale.ROOT), MEASURED);
        List<String> lines = new ArrayList<>();
        while (measurer.getPosition() < words.length()) {
            int start = measurer.getPosition();
            measurer.setPosition(measurer.nextOffset((float) Math.max(size, width)));
            lines.add(words.substring(start, measurer.getPosition()).strip());
        }
        lines.removeIf(String::isEmpty);
        return List.copyOf(lines);
    }

    private String shortened(String line, double width) {
        String kept = line;
        while (!kept.isEmpty() && width(kept + MORE) > width) {
            kept = kept.substring(0, kept.offsetByCodePoints(kept.length(), -1)).stripTrailing();
        }
        return kept + MORE;
    }
}
