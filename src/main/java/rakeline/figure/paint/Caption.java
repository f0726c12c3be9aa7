package rakeline.figure.paint;

import java.awt.Color;
import java.awt.Graphics2D;
import java.util.ArrayList;
import java.util.List;
import rakeline.figure.CautionsSaid;
import rakeline.quantity.Caution;

/** The words around a figure: its title above; what was held, notes and cautions beneath. */
record Caption(String title, String held, List<String> notes, List<Caution> cautions) {
    private static final int TITLE_LINES = 3;
    private static final int NOTE_LINES = 6;
    private static final double BETWEEN = 4;
    private static final double APART = 10;
    private static final String HELD = "Held:";
    private static final String CAUTION = "Caution:";

    double headHeight(double width) {
        double height = Lettering.TITLE.height(titleLines(width));
        return height == 0 ? 0 : height + APART;
    }

    double footHeight(double width) {
        double height = heldHeight(width);
        height += notes.stream().mapToDouble(note -> blockHeight(note, width)).sum();
        height += cautionsHeight(width);
        return height == 0 ? 0 : height - BETWEEN + APART;
    }

    void drawHead(Graphics2D pen, Palette palette, double x, double y, double width) {
        Lettering.TITLE.draw(pen, palette.ink(), titleLines(width), x, y);
    }

    void drawFoot(Graphics2D pen, Palette palette, double x, double y, double width) {
        double top = drawHeld(pen, palette, x, y + APART, width);
        top = drawBlocks(pen, palette.soft(), notes, x, top, width);
        for (String words : CautionsSaid.paragraphs(cautions)) {
            top = drawLed(pen, palette.caution(), CAUTION, led(words, CAUTION, width), x, top);
        }
    }

    private double drawHeld(Graphics2D pen, Palette palette, double x, double y, double width) {
        if (held.isEmpty()) {
            return y;
        }
        Lettering.STRONG.draw(pen, palette.ink(), HELD, x, y);
        return drawAfter(pen, palette.soft(), HELD, led(held, HELD, width), x, y);
    }

    /** Lines that a strong word of the same colour leads. */
    private static double drawLed(Graphics2D pen, Color colour, String word, List<String> lines, double x, double y) {
        Lettering.STRONG.draw(pen, colour, word, x, y);
        return drawAfter(pen, colour, word, lines, x, y);
    }

    private static double drawAfter(Graphics2D pen, Color colour, String word, List<String> lines, double x, double y) {
        Lettering.SMALL.draw(pen, colour, lines.get(0), x + indent(word), y);
        double next = y + Lettering.SMALL.lineHeight();
        return Lettering.SMALL.draw(pen, colour, lines.subList(1, lines.size()), x, next) + BETWEEN;
    }

    private static double drawBlocks(
            Graphics2D pen, Color colour, List<String> blocks, double x, double y, double width) {
        double top = y;
        for (String block : blocks) {
            Lettering.SMALL.draw(pen, colour, noteLines(block, width), x, top);
            top += blockHeight(block, width);
        }
        return top;
    }

    private List<String> titleLines(double width) {
        return Lettering.TITLE.lines(title, width / Lettering.WIDER, TITLE_LINES);
    }

    double heldHeight(double width) {
        return held.isEmpty() ? 0 : Lettering.SMALL.height(led(held, HELD, width)) + BETWEEN;
    }

    double cautionsHeight(double width) {
        return CautionsSaid.paragraphs(cautions).stream()
                .mapToDouble(words -> Lettering.SMALL.height(led(words, CAUTION, width)) + BETWEEN)
                .sum();
    }

    /** The first line is shorter by the word before it. */
    private static List<String> led(String words, String word, double width) {
        List<String> first = Lettering.SMALL.lines(words, width - indent(word));
        if (first.size() <= 1) {
            return first;
        }
        List<String> lines = new ArrayList<>(List.of(first.get(0)));
        String rest = String.join(" ", first.subList(1, first.size()));
        lines.addAll(Lettering.SMALL.lines(rest, width, NOTE_LINES - 1));
        return lines;
    }

    private static double indent(String word) {
        return Lettering.WIDER * Lettering.STRONG.width(word) + BETWEEN;
    }

    private static double blockHeight(String block, double width) {
        List<String> lines = noteLines(block, width);
        return lines.isEmpty() ? 0 : Lettering.SMALL.height(lines) + BETWEEN;
    }

    private static List<String> noteLines(String block, double width) {
        return Lettering.SMALL.lines(block, width, NOTE_LINES);
    }
}
