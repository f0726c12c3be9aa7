package rakeline.figure;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import rakeline.geometry.Bike;
import rakeline.handling.Ride;
import rakeline.quantity.Input;
import rakeline.study.Vocabulary;

/**
 * The bicycles that a figure is about, as they stand, and with whose shoe its numbers were taken.
 *
 * @param subjects in the order in which the figure shows them
 * @param ofShoe whether some number of the figure would be another with another shoe
 */
public record Basis(List<Subject> subjects, boolean ofShoe) {
    /** Of a figure that is about no bicycle in particular. */
    public static final Basis NONE = new Basis(List.of(), false);

    private static final String OWN_SHOE = "its own shoe";

    /**
     * One bicycle and whoever rides it.
     *
     * @param name as the figure calls it
     * @param start the name of what it was made of: the bicycle of a file
     * @param rider a name, or empty
     * @param hands where they are: hoods, tops or drops
     * @param shoe whose it is and what of it was changed, in words; empty where there is none
     * @param changed the numbers that are not as in its file, by key; the rider's own do not count
     */
    public record Subject(
            String name, String start, String rider, String hands, String shoe, Map<String, Double> changed) {
        public Subject {
            changed = Collections.unmodifiableMap(new LinkedHashMap<>(changed));
        }

        static Subject of(Ride ride) {
            Bike bike = ride.bike();
            Map<String, Double> changed = new LinkedHashMap<>();
            bike.changed().forEach((input, value) -> changed.put(input.key(), value));
            String rider = ride.ridden().rider().map(who -> who.name()).orElse("");
            String hands = ride.geometry().hands().word();
            return new Subject(bike.name(), bike.startName(), rider, hands, shoeOf(bike), changed);
        }

        /** Whether the other is the same bicycle with the same numbers under the same rider, whatever it is called. */
        public boolean isSameAs(Subject other) {
            return start.equals(other.start)
                    && rider.equals(other.rider)
                    && hands.equals(other.hands)
                    && shoe.equals(other.shoe)
                    && changed.equals(other.changed);
        }

        private static String shoeOf(Bike bike) {
            if (!bike.hasGroup("shoe")) {
                return "";
            }
            String whose = bike.shoeOf().isEmpty() ? OWN_SHOE : "the shoe of " + bike.shoeOf();
            List<String> changes = new ArrayList<>();
            bike.changed().forEach((input, value) -> {
                if (input.group().equals("shoe")) {
                    changes.add(change(input, value));
                }
            });
            return changes.isEmpty() ? whose : whose + " but " + String.join(", ", changes);
        }

        private static String change(Input input, double value) {
            return input.quantity().label().toLowerCase(Locale.ROOT) + " "
                    + input.quantity().formatWithUnit(value);
        }
    }

    public Basis {
        subjects = List.copyOf(subjects);
    }

    /** Of rides that a figure is about, and the keys of the measures and inputs that it shows. */
    public static Basis of(List<Ride> rides, Stream<String> keys) {
        return new Basis(rides.stream().map(Subject::of).toList(), keys.anyMatch(Vocabulary.standard()::isOfShoe));
    }

    /** Whose shoe it is, in a sentence; empty where no shoe matters. */
    public String words() {
        List<Subject> shod =
                subjects.stream().filter(subject -> !subject.shoe().isEmpty()).toList();
        if (!ofShoe || shod.isEmpty()) {
            return "";
        }
        return shod.stream().map(Subject::shoe).distinct().count() == 1 ? "With " + oneOf(shod) + "." : each(shod);
    }

    private static String oneOf(List<Subject> shod) {
        return shod.get(0)
                .shoe()
                .replaceFirst("^its own", shod.size() > 1 ? "each bicycle's own" : "the bicycle's own");
    }

    private static String each(List<Subject> shod) {
        return String.join(
                        "; ",
                        shod.stream()
                                .map(subject -> subject.name() + " with " + subject.shoe())
                                .toList())
                + ".";
    }
}
