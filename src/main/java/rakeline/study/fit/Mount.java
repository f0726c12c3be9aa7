package rakeline.study.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import rakeline.geometry.Bike;
import rakeline.geometry.Cockpit;
import rakeline.geometry.Geometry;
import rakeline.geometry.Inputs;
import rakeline.geometry.Point;
import rakeline.geometry.Refit;
import rakeline.geometry.parts.Category;
import rakeline.geometry.parts.Part;
import rakeline.geometry.parts.Stock;
import rakeline.quantity.Input;
import rakeline.quantity.Refusal;
import rakeline.study.Progress;

/**
 * The frame with one fork and one pair of tyres, and on it every stack of spacers, stem, bar, crank and post, each
 * solved once. What a combination of them gives is then a sum.
 */
final class Mount {
    /** Cover and spacers under a stem clamped so high: where stems leave the axis. */
    record Stack(int order, Part cover, Part spacers, double spacersMm, double clampMm, Point root, int exceeded) {}

    /** A stem, from the axis to the bar's clamp. */
    record Stem(int order, Part part, double lengthMm, double clampMm, Point vector) {}

    /** A bar, from its clamp to the hoods. */
    record Bar(int order, Part part, Point hoods) {}

    /** A crank under the rider's shoe. */
    record Foot(int order, Part part, Geometry geometry, int exceeded) {}

    /** A post under the sit point. */
    record Seat(int order, Part part, int exceeded) {}

    private final Match match;
    private final Bike bike;
    private final Bike whole;
    private final Bounds bounds;
    private final int fork;
    private final int tyre;
    private final Order order;

    private Mount(Match match, Bike bike, Bike whole, Bounds bounds, int fork, int tyre) {
        this.match = match;
        this.bike = bike;
        this.whole = whole;
        this.bounds = bounds;
        this.fork = fork;
        this.tyre = tyre;
        this.order = Order.of(match.stock());
    }

    /**
     * Fits a fork and tyres.
     *
     * @throws Refusal where they cannot be fitted, or bike and stock together lack what a cockpit needs
     */
    static Mount of(Match match, Bike base, int fork, int tyre) {
        Stock stock = match.stock();
        Map<Input, Double> exchanged = Part.together(
                stock.choices(Category.FORKS).get(fork),
                stock.choices(Category.TYRES).get(tyre));
        Bike fitted = exchanged.isEmpty() ? base : Refit.of(base, exchanged).bike();
        boolean says = fitted.has(Inputs.SPACER_LIMIT);
        Bike bike = says ? fitted : fitted.with(Inputs.SPACER_LIMIT, stock.spacerLimitMm());
        return new Mount(match, bike, whole(bike, stock), Bounds.of(stock, says), fork, tyre);
    }

    /** With the first of every kind of part, so that no group is left half. */
    private static Bike whole(Bike bike, Stock stock) {
        Part[] first = Stream.of(Category.values())
                .filter(category -> category != Category.FORKS && category != Category.TYRES)
                .map(category -> stock.choices(category).get(0))
                .toArray(Part[]::new);
        Bike whole = redrawn(bike, stock, Part.together(first));
        if (Geometry.of(whole).handPoint().isEmpty()) {
            throw new Refusal(whole.name() + " has no whole cockpit, and the parts \"" + stock.name()
                    + "\" do not make it whole; it needs a stem, spacers and a bar of its own.");
        }
        return whole;
    }

    private static Bike redrawn(Bike bike, Stock stock, Map<Input, Double> parts) {
        try {
            return bike.redraw(parts);
        } catch (Refusal e) {
            throw e.in(bike.name() + " with the parts \"" + stock.name() + "\"");
        }
    }

    /**
     * Offers every combination.
     *
     * @throws java.util.concurrent.CancellationException where the progress does not go on
     */
    void search(Best best, Progress progress) {
        List<Bar> bars = bars();
        List<Foot> feet = feet();
        List<Seat> seats = seats();
        List<Stem> stems = stems();
        List<Stack> stacks = stacks(stems);
        for (int i = 0; i < stacks.size(); i++) {
            Stack stack = stacks.get(i);
            progress.check((double) i / stacks.size());
            stems.stream()
                    .filter(stem -> stem.clampMm() == stack.clampMm())
                    .forEach(stem -> bars.forEach(bar -> offer(best, stack, stem, bar, feet, seats)));
        }
    }

    private void offer(Best best, Stack stack, Stem stem, Bar bar, List<Foot> feet, List<Seat> seats) {
        Point hand = stack.root().plus(stem.vector()).plus(bar.hoods());
        double distance = hand.minus(match.wanted().hand()).length();
        for (Foot foot : feet) {
            for (Seat seat : seats) {
                int exceeded = stack.exceeded() + foot.exceeded() + seat.exceeded();
                if (best.mayTake(exceeded, distance)) {
                    long place = order.of(bar, stack, stem, foot, fork, seat, tyre);
                    best.take(new Candidate(exceeded, distance, place, this, stack, stem, bar, foot, seat));
                }
            }
        }
    }

    /** The bike with these parts on it. */
    Option option(Geometry foot, Map<Input, Double> parts) {
        Bike fitted = bike.redraw(parts);
        Geometry built = Geometry.of(fitted);
        List<Exceeded> exceeded = new ArrayList<>(bounds.exceeded(Concern.COCKPIT, built));
        if (isSitKnown()) {
            exceeded.addAll(bounds.exceeded(Concern.SEAT, built));
        }
        exceeded.addAll(bounds.exceeded(Concern.FOOT, foot));
        return Option.of(match, built, foot, exceeded);
    }

    private boolean isSitKnown() {
        return match.wanted().sit().isPresent();
    }

    private List<Part> choices(Category category) {
        return match.stock().choices(category);
    }

    private List<Stack> stacks(List<Stem> stems) {
        List<Stack> stacks = new ArrayList<>();
        double[] clamps = stems.stream().mapToDouble(Stem::clampMm).distinct().toArray();
        for (Part cover : choices(Category.COVERS)) {
            for (Part spacers : choices(Category.SPACERS)) {
                int place = stacks.size() / clamps.length;
                for (double clamp : clamps) {
                    stacks.add(stack(place, cover, spacers, clamp));
                }
            }
        }
        return stacks;
    }

    private Stack stack(int place, Part cover, Part spacers, double clamp) {
        Part clamped = new Part(Map.of(Inputs.STEM_CLAMP_HEIGHT, clamp));
        Geometry stacked = Geometry.of(whole.redraw(Part.together(cover, spacers, clamped)));
        return new Stack(
                place,
                cover,
                spacers,
                stacked.bike().get(Inputs.SPACERS),
                clamp,
                stacked.cockpit().orElseThrow().stemRoot(),
                bounds.count(Concern.COCKPIT, stacked));
    }

    private List<Stem> stems() {
        Geometry geometry = Geometry.of(whole);
        Part cover = choices(Category.COVERS).get(0);
        Part spacers = choices(Category.SPACERS).get(0);
        List<Stem> stems = new ArrayList<>();
        for (Part part : choices(Category.STEMS)) {
            Bike with = bike.redraw(Part.together(cover, spacers, part));
            double length = with.get(Inputs.STEM_LENGTH);
            Point vector = Cockpit.stem(geometry.side(), length, with.get(Inputs.STEM_ANGLE));
            stems.add(new Stem(stems.size(), part, length, with.get(Inputs.STEM_CLAMP_HEIGHT), vector));
        }
        return stems;
    }

    private List<Bar> bars() {
        List<Bar> bars = new ArrayList<>();
        for (Part part : choices(Category.BARS)) {
            bars.add(new Bar(
                    bars.size(),
                    part,
                    new Point(
                            part.get(Inputs.HOOD_FORWARD, whole.get(Inputs.HOOD_FORWARD)),
                            part.get(Inputs.HOOD_RISE, whole.get(Inputs.HOOD_RISE)))));
        }
        return bars;
    }

    private List<Foot> feet() {
        List<Foot> feet = new ArrayList<>();
        for (Part part : choices(Category.CRANKS)) {
            Geometry geometry = Geometry.of(bike.redraw(part.numbers()));
            feet.add(new Foot(feet.size(), part, geometry, bounds.count(Concern.FOOT, geometry)));
        }
        return feet;
    }

    private List<Seat> seats() {
        List<Seat> seats = new ArrayList<>();
        for (Part part : choices(Category.POSTS)) {
            Geometry geometry = Geometry.of(bike.redraw(part.numbers()));
            seats.add(new Seat(seats.size(), part, isSitKnown() ? bounds.count(Concern.SEAT, geometry) : 0));
        }
        return seats;
    }
}
