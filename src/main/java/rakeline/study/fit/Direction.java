package rakeline.study.fit;

import java.util.List;
import java.util.Map;
import rakeline.quantity.Decimals;
import rakeline.quantity.Quantity;
import rakeline.quantity.Unit;

/** Differences in words that say which way: lower and not −12 mm, slacker and not −0.4°. */
public final class Direction {
    /** What stands for above 0 and for below it, by what a key holds; the first that fits. */
    private static final List<Map.Entry<String, List<String>>> BY_KEY = List.of(
            Map.entry("headAngleDeg", List.of("steeper", "slacker")),
            Map.entry("seatAngleDeg", List.of("steeper", "slacker")),
            Map.entry("seatTubeAngleDeg", List.of("steeper", "slacker")),
            Map.entry("stemAngleDeg", List.of("steeper", "flatter")),
            Map.entry("seatAngleAt", List.of("higher", "lower")),
            Map.entry("torsoAngle", List.of("more upright", "lower")),
            Map.entry("Dx", List.of("further forward", "further back")),
            Map.entry("handX", List.of("further forward", "further back")),
            Map.entry("handMissX", List.of("further forward", "further back")),
            Map.entry("barX", List.of("further forward", "further back")),
            Map.entry("sitX", List.of("further forward", "further back")),
            Map.entry("massCentreX", List.of("further forward", "further back")),
            Map.entry("Setback", List.of("further back", "further forward")),
            Map.entry("hoodForward", List.of("further forward", "further back")),
            Map.entry("Dy", List.of("higher", "lower")),
            Map.entry("handY", List.of("higher", "lower")),
            Map.entry("handMissY", List.of("higher", "lower")),
            Map.entry("barY", List.of("higher", "lower")),
            Map.entry("sitY", List.of("higher", "lower")),
            Map.entry("massCentreY", List.of("higher", "lower")),
            Map.entry("Height", List.of("higher", "lower")),
            Map.entry("standoverMm", List.of("higher", "lower")),
            Map.entry("frame.stack", List.of("higher", "lower")),
            Map.entry("Drop", List.of("more", "less")),
            Map.entry("Room", List.of("more", "less")),
            Map.entry("Left", List.of("more", "less")),
            Map.entry("Gap", List.of("more", "less")),
            Map.entry("Clearance", List.of("more", "less")),
            Map.entry("Margin", List.of("more", "less")),
            Map.entry("Miss", List.of("more", "less")),
            Map.entry("ToTyre", List.of("more", "less")),
            Map.entry("trail", List.of("more", "less")),
            Map.entry("Trail", List.of("more", "less")),
            Map.entry("Flop", List.of("more", "less")),
            Map.entry("idth", List.of("wider", "narrower")),
            Map.entry("tyreMm", List.of("wider", "narrower")));

    private Direction() {}

    /** As in {@code 12.3 mm lower}. */
    public static String words(Quantity quantity, double difference) {
        return quantity.unit().attach(size(quantity, difference)) + " " + word(quantity, difference);
    }

    /** With one decimal more than the quantity itself. */
    private static String size(Quantity quantity, double difference) {
        return Decimals.fixed(Math.abs(difference), quantity.decimals() + 1);
    }

    private static String word(Quantity quantity, double difference) {
        List<String> both = BY_KEY.stream()
                .filter(entry -> quantity.key().contains(entry.getKey()))
                .map(Map.Entry::getValue)
                .findFirst()
                .orElseGet(() -> usual(quantity.unit()));
        return both.get(difference > 0 ? 0 : 1);
    }

    private static List<String> usual(Unit unit) {
        return switch (unit) {
            case MILLIMETRE, METRE -> List.of("longer", "shorter");
            case KILOMETRE_PER_HOUR, METRE_PER_SECOND -> List.of("faster", "slower");
            default -> List.of("more", "less");
        };
    }
}
