package rakeline.geometry;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import rakeline.quantity.Entries;
import rakeline.quantity.Input;
import rakeline.quantity.Range;
import rakeline.quantity.Refusal;

/** Bicycles that the definitions accept and nobody would draw: their numbers lie at the ends of what is accepted. */
public final class ExtremeBikes {
    /** So far from an end a number is still near it, as a share of the range. */
    private static final double NEAR = 0.02;

    private static final List<String> OPTIONAL_GROUPS = List.of(
            "crank", "shoe", "cockpit", "cockpit.bar", "contact", "seatpost", "saddle", "frame.topTube", "ride");

    private ExtremeBikes() {}

    /**
     * A whole bicycle, each number at or near one end of its accepted range, or, one time in four, anywhere within; one
     * time in three some groups or optional numbers are left out. What cannot be built is drawn again.
     */
    public static Bike extreme(Random random) {
        return drawn(random, ExtremeBikes::nearAnEnd, random.nextInt(3) == 0);
    }

    /** A whole bicycle with numbers of any length anywhere within what is accepted. */
    public static Bike anywhere(Random random) {
        return drawn(random, ExtremeBikes::within, false);
    }

    private static Bike drawn(Random random, Draw draw, boolean partly) {
        while (true) {
            Optional<Bike> bike = built(numbers(random, draw, partly));
            if (bike.isPresent()) {
                return bike.get();
            }
        }
    }

    private static Map<Input, Double> numbers(Random random, Draw draw, boolean partly) {
        Map<Input, Double> numbers = new HashMap<>();
        for (Input input : Inputs.all()) {
            boolean needed = input.presence() instanceof Input.Presence.Required || Handlebar.isHood(input);
            if (needed || !partly || random.nextBoolean()) {
                numbers.put(input, draw.from(random, input.quantity().accepted()));
            }
        }
        boolean levers = numbers.containsKey(Inputs.BAR_REACH) && random.nextBoolean();
        numbers.keySet()
                .removeIf(input ->
                        levers ? Handlebar.isHood(input) : input.group().endsWith(".lever"));
        if (random.nextBoolean()) {
            numbers.keySet().removeIf(input -> input.group().startsWith("masses"));
        }
        if (partly) {
            String left = OPTIONAL_GROUPS.get(random.nextInt(OPTIONAL_GROUPS.size()));
            numbers.keySet().removeIf(input -> (input.group() + ".").startsWith(left + "."));
        }
        return numbers;
    }

    /** Empty where the definitions do not accept it: the bicycle cannot be built. */
    private static Optional<Bike> built(Map<Input, Double> numbers) {
        try {
            return Optional.of(Bike.of("Extreme", Entries.none().with(numbers), Set.of(), Map.of()));
        } catch (Refusal cannotBeBuilt) {
            if (!cannotBeBuilt.getMessage().startsWith("Extreme cannot be built: ")) {
                throw cannotBeBuilt;
            }
            return Optional.empty();
        }
    }

    private static double nearAnEnd(Random random, Range range) {
        double width = range.to() - range.from();
        double off = random.nextInt(3) == 0 ? 0 : NEAR * width * random.nextDouble();
        if (random.nextInt(4) == 0) {
            return within(random, range);
        }
        return random.nextBoolean() ? range.from() + off : range.to() - off;
    }

    private static double within(Random random, Range range) {
        return range.from() + (range.to() - range.from()) * random.nextDouble();
    }

    /** A number out of a range. */
    private interface Draw {
        double from(Random random, Range range);
    }
}
