package rakeline.study.fit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import rakeline.geometry.Inputs;
import rakeline.geometry.parts.Category;
import rakeline.geometry.parts.Field;
import rakeline.geometry.parts.Part;
import rakeline.geometry.parts.Spacers;
import rakeline.geometry.parts.Stock;
import rakeline.quantity.Input;

/** Stocks for tests. */
public final class Stocks {
    private static final Set<Input> HOODS = Set.of(Inputs.HOOD_FORWARD, Inputs.HOOD_RISE);
    private static final Set<Input> LEVERS = Set.of(Inputs.LEVER_AHEAD, Inputs.LEVER_UP);

    private Stocks() {}

    /** Parts of one category, each the category's first numbers in order. */
    public static List<Part> parts(Category category, double[]... numbers) {
        List<Part> parts = new ArrayList<>();
        for (double[] values : numbers) {
            Map<Input, Double> brings = new HashMap<>();
            for (int i = 0; i < values.length; i++) {
                double value = values[i];
                category.fields().get(i).inputs().forEach(input -> brings.put(input, value));
            }
            parts.add(new Part(brings));
        }
        return parts;
    }

    public static double[] row(double... values) {
        return values;
    }

    public static Stock of(Map<Category, List<Part>> parts, double... spacers) {
        Optional<Spacers> stacked = spacers.length == 0
                ? Optional.empty()
                : Optional.of(new Spacers(Arrays.stream(spacers).boxed().toList(), 40, Spacers.USUAL_LIMIT_MM));
        return new Stock("Stock", parts, stacked, List.of());
    }

    /** About ten thousand combinations: 8 stems by 6 angles, 13 stacks, 2 bars, 4 cranks, 2 posts. */
    public static Stock tenThousand() {
        List<double[]> stems = new ArrayList<>();
        for (double length = 60; length <= 130; length += 10) {
            for (double angle : row(-17, -10, -6, 6, 10, 17)) {
                stems.add(row(length, angle, 40));
            }
        }
        Map<Category, List<Part>> parts = new EnumMap<>(Category.class);
        parts.put(Category.STEMS, parts(Category.STEMS, stems.toArray(new double[0][])));
        parts.put(Category.BARS, parts(Category.BARS, row(400, 105, 15, 70, 120), row(420, 118, 12, 82, 130)));
        parts.put(Category.CRANKS, parts(Category.CRANKS, row(160), row(165), row(170), row(172.5)));
        parts.put(Category.POSTS, parts(Category.POSTS, row(0, 350, 80), row(20, 350, 80)));
        return new Stock(
                "Ten thousand",
                parts,
                Optional.of(new Spacers(List.of(2.5, 5.0, 10.0), 30, Spacers.USUAL_LIMIT_MM)),
                List.of());
    }

    /** A small stock of random parts, some categories left out. */
    public static Stock random(Random random) {
        Map<Category, List<Part>> parts = new EnumMap<>(Category.class);
        for (Category category : Category.values()) {
            if (category != Category.SPACERS && random.nextInt(4) > 0) {
                parts.put(category, List.of(part(category, random), part(category, random)));
            }
        }
        return random.nextBoolean() ? of(parts, 5, 12.5) : of(parts);
    }

    private static Part part(Category category, Random random) {
        Map<Input, Double> numbers = new HashMap<>();
        Set<Input> left = random.nextBoolean() ? LEVERS : HOODS;
        for (Field field : category.fields()) {
            if (field.inputs().stream().anyMatch(left::contains)) {
                continue;
            }
            double value = usual(field.option()) + random.nextInt(9) - 4;
            field.inputs().forEach(input -> numbers.put(input, value));
        }
        return new Part(numbers);
    }

    private static double usual(String option) {
        return Map.ofEntries(
                        Map.entry("barWidthMm", 400.0),
                        Map.entry("hoodForwardMm", 110.0),
                        Map.entry("hoodRiseMm", 15.0),
                        Map.entry("leverAheadMm", 36.0),
                        Map.entry("leverUpMm", 15.0),
                        Map.entry("barFlareDeg", 8.0),
                        Map.entry("pedalStackMm", 12.0),
                        Map.entry("barReachMm", 75.0),
                        Map.entry("barDropMm", 120.0),
                        Map.entry("headsetCoverMm", 8.0),
                        Map.entry("stemLengthMm", 95.0),
                        Map.entry("stemAngleDeg", 0.0),
                        Map.entry("stemClampHeightMm", 40.0),
                        Map.entry("crankLengthMm", 168.0),
                        Map.entry("stanceWidthMm", 245.0),
                        Map.entry("forkOffsetMm", 47.0),
                        Map.entry("axleToCrownMm", 376.0),
                        Map.entry("steererLengthMm", 190.0),
                        Map.entry("spacerLimitMm", 20.0),
                        Map.entry("postSetbackMm", 12.0),
                        Map.entry("postLengthMm", 270.0),
                        Map.entry("minimumInsertionMm", 80.0),
                        Map.entry("tyreMm", 30.0),
                        Map.entry("mudguardGapMm", 6.0))
                .get(option);
    }
}
