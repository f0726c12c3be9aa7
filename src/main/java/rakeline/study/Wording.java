package rakeline.study;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import rakeline.quantity.Decimals;
import rakeline.quantity.Quantity;
import rakeline.quantity.Sentences;

/** What the titles of all studies say alike. */
final class Wording {
    private static final String RIGID = "the frame, one rigid body that turns about the ground until both tyres touch";

    private Wording() {}

    /** A label inside a sentence; an acronym keeps its capitals. */
    static String lower(String label) {
        return Sentences.lower(label);
    }

    /** As in {@code head angle 69 to 74°}. */
    static String range(Quantity quantity, double from, double to) {
        return lower(quantity.label()) + " " + Decimals.shown(from, quantity.decimals() + 2) + " to "
                + quantity.said(to);
    }

    /** How the varied numbers were changed: one word where all were changed alike. */
    static String ways(List<Varied> varied) {
        List<Mode> modes = varied.stream().map(Varied::mode).distinct().toList();
        return modes.size() == 1
                ? modes.get(0).participle()
                : varied.stream()
                                .filter(each -> each.mode() == Mode.REFIT)
                                .map(each -> lower(each.setting().quantity().label()))
                                .collect(Collectors.joining(", "))
                        + " refitted, the rest redrawn";
    }

    /** What stayed as it was while numbers varied, in words. */
    static String held(List<Varied> varied, Optional<Hold> hold) {
        return hold.map(Wording::solved).orElse("") + rest(varied) + ".";
    }

    private static String solved(Hold hold) {
        return lower(hold.measure().quantity().label()) + " at "
                + hold.measure().quantity().formatWithUnit(hold.target()) + " by solving for "
                + lower(hold.by().quantity().label()) + "; ";
    }

    private static String rest(List<Varied> varied) {
        boolean wheelDrawn = varied.stream()
                .anyMatch(each -> each.mode() == Mode.REDRAW && each.setting().isWheel());
        boolean refitted = varied.stream().anyMatch(each -> each.mode() == Mode.REFIT);
        boolean redrawn = varied.stream().anyMatch(each -> each.mode() == Mode.REDRAW);
        String others = wheelDrawn ? "BB drop and every other input, as drawn" : "every other input, as drawn";
        return refitted ? (redrawn ? "every other input; " : "") + RIGID : others;
    }
}
