package rakeline.catalogue.chart;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A wheel or tyre by one of its names: 622, 700c, 28-622, 700x28c, 650b × 47, 29".
 *
 * @param beadSeatMm diameter of the bead seat in millimetres; source: ISO 5775, read in a secondary copy; the trade's names by common practice
 * @param tyreMm the tyre's width in millimetres, where the name says it
 */
public record WheelName(double beadSeatMm, Optional<BigDecimal> tyreMm) {
    private static final Map<String, Integer> NAMES = Map.ofEntries(
            Map.entry("700c", 622),
            Map.entry("700", 622),
            Map.entry("29", 622),
            Map.entry("29er", 622),
            Map.entry("28", 622),
            Map.entry("650b", 584),
            Map.entry("27.5", 584),
            Map.entry("650c", 571),
            Map.entry("26", 559),
            Map.entry("24", 507),
            Map.entry("20", 406));
    private static final String ISO = "(622|584|571|559|590|630|507|451|406|349)";
    private static final Pattern ISO_ALONE = Pattern.compile("(?:iso |etrto )?" + ISO);
    private static final Pattern ISO_WITH_TYRE = Pattern.compile("(\\d{2,3}(?:\\.\\d+)?)\\s*-\\s*" + ISO);
    private static final Pattern WITH_TYRE =
            Pattern.compile("(700c?|650b|650c|29(?:er)?)\\s*[x×]\\s*(\\d{2,3}(?:\\.\\d+)?)\\s*(?:c|mm)?");

    /** The wheel of a name; empty where it is none that is known. */
    public static Optional<WheelName> of(String text) {
        String name = text.strip()
                .toLowerCase(Locale.ROOT)
                .replaceAll("(\"|″|''| ?in| ?mm)$", "")
                .strip();
        Matcher iso = ISO_WITH_TYRE.matcher(name);
        if (iso.matches()) {
            return wheel(iso.group(2), new BigDecimal(iso.group(1)));
        }
        Matcher trade = WITH_TYRE.matcher(name);
        if (trade.matches()) {
            return Optional.of(new WheelName(NAMES.get(trade.group(1)), Optional.of(new BigDecimal(trade.group(2)))));
        }
        Matcher alone = ISO_ALONE.matcher(name);
        return alone.matches()
                ? Optional.of(new WheelName(Double.parseDouble(alone.group(1)), Optional.empty()))
                : Optional.ofNullable(NAMES.get(name)).map(size -> new WheelName(size, Optional.empty()));
    }

    private static Optional<WheelName> wheel(String beadSeat, BigDecimal tyre) {
        return Optional.of(new WheelName(Double.parseDouble(beadSeat), Optional.of(tyre)));
    }
}
