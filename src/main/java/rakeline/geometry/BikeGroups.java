package rakeline.geometry;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import rakeline.quantity.Input;
import rakeline.quantity.Sentences;

/** The groups of a bike file in words, and what of them is missing: for people, who do not think in keys. */
public final class BikeGroups {
    private static final Map<String, String> WORDS = Map.ofEntries(
            Map.entry("frame", "the frame"),
            Map.entry("frame.topTube", "the top tube"),
            Map.entry("fork", "the fork"),
            Map.entry("wheels.front", "the front wheel"),
            Map.entry("wheels.rear", "the rear wheel"),
            Map.entry("crank", "cranks"),
            Map.entry("shoe", "a shoe"),
            Map.entry("cockpit", "stem and spacers"),
            Map.entry("cockpit.bar", "a handlebar"),
            Map.entry("cockpit.bar.lever", "brake levers"),
            Map.entry("contact", "contact points"),
            Map.entry("seatpost", "a seat post"),
            Map.entry("saddle", "a saddle"),
            Map.entry("ride", "speed, lean and steering angle"),
            Map.entry("charted", "the maker's own figures"));

    private BikeGroups() {}

    /** A group as people call it: {@code a handlebar} for {@code cockpit.bar}. */
    public static String words(String group) {
        return WORDS.getOrDefault(group, "masses");
    }

    /** What of these a bike has no value for, in words: a group that is absent as a whole, or the single number. */
    public static String missingWords(Bike bike, Collection<Input> inputs) {
        return Sentences.list(inputs.stream()
                .filter(input -> !bike.has(input))
                .map(input -> bike.hasGroup(input.group()) ? input.quantity().inSentence() : words(input.group()))
                .distinct()
                .toList());
    }

    /**
     * Refuses a bike of which a group is there but not whole, naming everything that is missing.
     *
     * @throws rakeline.quantity.Refusal with each missing number, its key and what is accepted for it
     */
    static void checkWhole(Bike bike) {
        List<Input> missing = required()
                .filter(input -> bike.hasGroup(input.group()) && !bike.has(input))
                .toList();
        if (!missing.isEmpty()) {
            throw Input.notWhole(bike.name(), missing);
        }
    }

    /** What a group needs; the hoods' place too, where levers do not give it. */
    private static Stream<Input> required() {
        return Inputs.all().stream()
                .filter(input -> input.presence() instanceof Input.Presence.Required || Handlebar.isHood(input));
    }
}
