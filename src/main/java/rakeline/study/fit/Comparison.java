package rakeline.study.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rakeline.geometry.Bike;
import rakeline.geometry.Hands;
import rakeline.geometry.Inputs;
import rakeline.handling.Ride;
import rakeline.quantity.Caution;
import rakeline.quantity.Input;
import rakeline.quantity.Measure;
import rakeline.quantity.Numbers;
import rakeline.quantity.Quantity;
import rakeline.quantity.Reading;
import rakeline.quantity.Refusal;
import rakeline.quantity.Unit;
import rakeline.study.Vocabulary;

/**
 * Bikes side by side: inputs in which they differ, every measure, and the differences against the first.
 *
 * @param contact whose contact points are on all of them; empty where each has its own
 */
public record Comparison(List<Contender> contenders, Optional<String> contact, List<Row> inputs, List<Row> measures) {
    private static final double UNCERTAINTIES_APART = 2;

    /** Below this share of a number a difference is rounding in the arithmetic. */
    private static final double NOISE = 1e-9;

    private static final List<Input> FOOTING =
            List.of(Inputs.CRANK_LENGTH, Inputs.PEDAL_STACK, Inputs.TOE_FORWARD, Inputs.SOLE);

    /**
     * One number of all bikes.
     *
     * @param values NaN where a bike has none
     * @param differences against the first
     * @param uncertainties standard uncertainty of each difference, errors that both share cancelling; NaN where it is
     *     not known
     */
    public record Row(Quantity quantity, Numbers values, Numbers differences, Numbers uncertainties) {
        /** A difference in per cent of the first; NaN where that says nothing, as of angles. */
        public double percent(int bike) {
            Unit unit = quantity.unit();
            boolean says = unit != Unit.DEGREE && unit != Unit.PERCENT && values.at(0) > 0;
            return says ? 100 * differences.at(bike) / values.at(0) : Double.NaN;
        }

        /** Whether this tells a bike from the first: a difference of more than twice its standard uncertainty. */
        public boolean tellsApart(int bike) {
            double noise = NOISE * Math.max(1, Math.abs(values.at(0)));
            return Math.abs(differences.at(bike)) > Math.max(noise, UNCERTAINTIES_APART * uncertainties.at(bike));
        }

        /** The difference in words, as in {@code 12.3 mm lower}; empty where this does not tell the bikes apart. */
        public String difference(int bike) {
            return tellsApart(bike) ? Direction.words(quantity, differences.at(bike)) : "";
        }
    }

    public Comparison {
        contenders = List.copyOf(contenders);
        inputs = List.copyOf(inputs);
        measures = List.copyOf(measures);
    }

    /**
     * Compares.
     *
     * @param hands where the hands are: one place, or several, each with rows of its own
     * @param sharedFoot whether shoe and cranks are the same rider's, so that their errors are shared
     * @param only the keys to compare; empty for all
     */
    public static Comparison of(
            Vocabulary vocabulary,
            List<Contender> contenders,
            List<Hands> hands,
            Optional<String> contact,
            boolean sharedFoot,
            List<String> only) {
        if (contenders.size() < 2) {
            throw new Refusal("a comparison has " + contenders.size() + " bike; accepted are two or more.");
        }
        List<Measure<Ride>> measures = measures(vocabulary, contenders, hands, only);
        List<Measure<Ride>> inputs = only.isEmpty() ? differing(vocabulary, contenders) : List.of();
        Differences differences = Differences.of(
                contenders, Stream.concat(inputs.stream(), measures.stream()).toList(), contact, sharedFoot);
        return new Comparison(contenders, contact, differences.rows(inputs), differences.rows(measures));
    }

    /** Those asked for that at least one of the bikes has the inputs for, each place of the hands apart. */
    private static List<Measure<Ride>> measures(
            Vocabulary vocabulary, List<Contender> contenders, List<Hands> hands, List<String> only) {
        Stream<Measure<Ride>> asked = only.isEmpty()
                ? vocabulary.measures().values().stream()
                : only.stream().map(vocabulary::tracked);
        return asked.flatMap(measure -> Handed.spread(measure, contenders, hands))
                .filter(measure ->
                        contenders.stream().anyMatch(one -> !(measure.read(one.ride()) instanceof Reading.Lacking)))
                .toList();
    }

    /** The inputs, charted ones and contact points apart, that are not the same on all. */
    private static List<Measure<Ride>> differing(Vocabulary vocabulary, List<Contender> contenders) {
        List<Measure<Ride>> differing = new ArrayList<>();
        for (Input input : Inputs.all()) {
            boolean differs = contenders.stream()
                            .map(one -> one.ride().bike().get(input))
                            .distinct()
                            .count()
                    > 1;
            if (differs && !input.key().startsWith("charted.")) {
                differing.add(vocabulary.tracked(input.key()));
            }
        }
        return differing;
    }

    /**
     * What of a rider's footing is not the same on all: one sentence each for cranks, pedals and shoes; none where it is
     * what was changed.
     */
    public List<String> differentFooting() {
        return changes().isEmpty()
                ? FOOTING.stream().flatMap(input -> different(input).stream()).toList()
                : List.of();
    }

    private Optional<String> different(Input input) {
        List<Bike> bikes = contenders.stream()
                .map(one -> one.ride().bike())
                .filter(bike -> bike.has(input))
                .toList();
        boolean same = bikes.stream().map(bike -> bike.get(input)).distinct().count() < 2;
        String each = bikes.stream()
                .map(bike -> bike.name() + " " + input.quantity().said(bike.get(input)))
                .collect(Collectors.joining(", "));
        return same
                ? Optional.empty()
                : Optional.of(input.quantity().label() + " is not the same on all: " + each + ".");
    }

    /** What was changed of bikes that stand beside what they were made of, and in which way; empty where nothing was. */
    public String changes() {
        return contenders.stream()
                .flatMap(one -> one.changed().stream())
                .distinct()
                .map(varied -> varied.setting().quantity().label() + " is "
                        + varied.mode().participle())
                .collect(Collectors.joining(", "));
    }

    /** The cautions that belong to what was compared and to what was changed, each once. */
    public List<Caution> cautions() {
        Stream<Quantity> changed = contenders.stream()
                .flatMap(one -> one.changed().stream())
                .map(varied -> varied.setting().quantity());
        Stream<Quantity> rows =
                Stream.concat(inputs.stream(), measures.stream()).map(Row::quantity);
        return Quantity.cautionsOf(Stream.concat(rows, changed).toList());
    }
}
