package rakeline.study.fit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import rakeline.geometry.Bike;
import rakeline.geometry.Cockpit;
import rakeline.geometry.ContactMeasures;
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
    private static final double SAME_MM = 1e-6;

    /**
     * What parts leave to the limits they are held against.
     *
     * @param margins the tightest first
     * @param beyond whether they are beyond one
     * @param tightest what is left to the tightest, in units of its uncertainty
     * @param changed how many kinds of parts differ from those on the bike
     */
    record Held(List<Margin> margins, boolean beyond, double tightest, int changed) {
        static Held of(List<Margin> margins, int changed) {
            List<Margin> sorted = margins.stream().sorted(Margin.TIGHTEST_FIRST).toList();
            return new Held(
                    sorted,
                    sorted.stream().anyMatch(Margin::isBeyond),
                    sorted.isEmpty() ? Double.POSITIVE_INFINITY : sorted.get(0).inUncertainties(),
                    changed);
        }
    }

    /** Cover and spacers under a stem clamped so high: where stems leave the axis. */
    record Stack(int order, Part cover, Part spacers, double spacersMm, double clampMm, Point root, Held held) {}

    /** A stem, from the axis to the bar's clamp. */
    record Stem(int order, Part part, double lengthMm, double clampMm, Point vector, int changed) {}

    /** A bar, from its clamp to the hoods. */
    record Bar(int order, Part part, Point hoods, int changed) {}

    /**
     * A crank under the rider's shoe, and the posts that seat the rider over it, those together that put the saddle on
     * the same point.
     *
     * @param hand where the hoods are wanted with it
     */
    record Foot(int order, Part part, Geometry geometry, Held held, Point hand, List<List<Seat>> seats) {}

    /** A post under the sit point. */
    record Seat(int order, Part part, Held held) {}

    private final Match match;
    private final Bike present;
    private final Bike bike;
    private final Bike whole;
    private final Bounds bounds;
    private final int fork;
    private final int tyre;
    private final Order order;

    private Mount(Match match, Bike present, Bike bike, Bounds bounds, int fork, int tyre) {
        this.match = match;
        this.present = present;
        this.bike = bike;
        this.whole = whole(bike, match.stock());
        this.bounds = bounds;
        this.fork = fork;
        this.tyre = tyre;
        this.order = Order.of(match.stock());
    }

    /**
     * Fits a fork and tyres.
     *
     * @param present the bike with the parts that are on it now
     * @throws Refusal where they cannot be fitted, or bike and stock together lack what a cockpit needs
     */
    static Mount of(Match match, Bike present, int fork, int tyre) {
        Stock stock = match.stock();
        Map<Input, Double> exchanged = Part.together(
                stock.choices(Category.FORKS).get(fork),
                stock.choices(Category.TYRES).get(tyre));
        Bike fitted =
                exchanged.isEmpty() ? present : Refit.of(present, exchanged).bike();
        boolean says = fitted.has(Inputs.SPACER_LIMIT);
        Bike bike = says ? fitted : fitted.with(Inputs.SPACER_LIMIT, stock.spacerLimitMm());
        return new Mount(match, present, bike, Bounds.of(stock, says), fork, tyre);
    }

    /** With the first of every kind of part, so that no group is left half. */
    private static Bike whole(Bike bike, Stock stock) {
        Part[] first = Stream.of(Category.values())
                .filter(category -> category != Category.FORKS && category != Category.TYRES)
                .map(category -> stock.choices(category).get(0))
                .toArray(Part[]::new);
        Bike whole = redrawn(bike, stock, new Part(Part.together(first)).on(bike));
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
        List<Foot> feet = feet(progress);
        List<Stem> stems = stems();
        List<Stack> stacks = stacks(stems);
        for (int i = 0; i < stacks.size(); i++) {
            Stack stack = stacks.get(i);
            progress.check((double) i / stacks.size());
            stems.stream()
                    .filter(stem -> stem.clampMm() == stack.clampMm())
                    .forEach(stem ->
                            bars.forEach(bar -> feet.forEach(foot -> new Place(stack, stem, bar, foot).offer(best))));
        }
    }

    /** A combination but for its post. */
    private final class Place {
        private final Stack stack;
        private final Stem stem;
        private final Bar bar;
        private final Foot foot;
        private final double distanceMm;

        Place(Stack stack, Stem stem, Bar bar, Foot foot) {
            Point hand = stack.root().plus(stem.vector()).plus(bar.hoods());
            this.stack = stack;
            this.stem = stem;
            this.bar = bar;
            this.foot = foot;
            this.distanceMm = hand.minus(foot.hand()).length();
        }

        void offer(Best best) {
            boolean beyond = stack.held().beyond() || foot.held().beyond();
            if (best.mayTake(beyond, beyondToleranceMm())) {
                foot.seats().forEach(posts -> offer(best, posts));
            }
        }

        private void offer(Best best, List<Seat> posts) {
            Seat seat = first(posts);
            Rank rank = rank(seat);
            if (best.takes(rank)) {
                List<Seat> others = posts.stream()
                        .filter(post -> !post.equals(seat))
                        .sorted(Comparator.comparing(this::rank))
                        .toList();
                best.take(new Candidate(rank, Mount.this, stack, stem, bar, foot, seat, others));
            }
        }

        private Seat first(List<Seat> posts) {
            return posts.size() == 1
                    ? posts.get(0)
                    : posts.stream().min(Comparator.comparing(this::rank)).orElseThrow();
        }

        private Rank rank(Seat seat) {
            double tightest = Math.min(
                    stack.held().tightest(),
                    Math.min(foot.held().tightest(), seat.held().tightest()));
            int changes = stack.held().changed()
                    + stem.changed()
                    + bar.changed()
                    + foot.held().changed()
                    + seat.held().changed();
            return new Rank(
                    stack.held().beyond() || foot.held().beyond() || seat.held().beyond(),
                    beyondToleranceMm(),
                    tightest,
                    changes,
                    distanceMm,
                    stack.spacersMm(),
                    stem.lengthMm(),
                    order.of(bar, stack, stem, foot, fork, seat, tyre));
        }

        private double beyondToleranceMm() {
            return Math.max(0, distanceMm - match.toleranceMm());
        }
    }

    /** The bike with these parts on it. */
    Option option(Candidate candidate, Map<Input, Double> parts) {
        Bike fitted = match.wanted().seat(bike.redraw(parts));
        Geometry built = Geometry.of(fitted);
        List<Margin> margins = Stream.of(
                        candidate.stack().held(),
                        candidate.seat().held(),
                        candidate.foot().held())
                .flatMap(held -> held.margins().stream())
                .sorted(Margin.TIGHTEST_FIRST)
                .toList();
        List<List<Option.Fact>> others = candidate.others().stream()
                .map(post -> Facts.ofPost(fitted.redraw(post.part().numbers())))
                .toList();
        return Option.of(match, built, candidate.foot().geometry(), margins, others);
    }

    private boolean isSitKnown() {
        return match.wanted().sit().isPresent();
    }

    private List<Part> choices(Category category) {
        return match.stock().choices(category);
    }

    /** How many of these parts are not what is on the bike. */
    private int changed(Part... parts) {
        return (int) Stream.of(parts).filter(part -> part.changes(present)).count();
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
                Held.of(bounds.margins(Concern.COCKPIT, stacked), changed(cover, spacers)));
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
            stems.add(new Stem(stems.size(), part, length, with.get(Inputs.STEM_CLAMP_HEIGHT), vector, changed(part)));
        }
        return stems;
    }

    private List<Bar> bars() {
        List<Bar> bars = new ArrayList<>();
        for (Part part : choices(Category.BARS)) {
            Part onBike = new Part(part.on(bike));
            Bike with = (bike.has(Inputs.BAR_WIDTH) ? bike : whole).redraw(onBike.numbers());
            Point hoods = new Point(with.get(Inputs.HOOD_FORWARD), with.get(Inputs.HOOD_RISE));
            bars.add(new Bar(bars.size(), onBike, hoods, changed(part)));
        }
        return bars;
    }

    private List<Foot> feet(Progress progress) {
        List<Foot> feet = new ArrayList<>();
        int exchanged = changed(
                choices(Category.FORKS).get(fork), choices(Category.TYRES).get(tyre));
        for (Part part : choices(Category.CRANKS)) {
            progress.check(0);
            Bike on = match.wanted().seat(bike.redraw(part.numbers()));
            Geometry geometry = Geometry.of(on);
            Held held = Held.of(bounds.margins(Concern.FOOT, geometry), exchanged + changed(part));
            feet.add(new Foot(feet.size(), part, geometry, held, match.wanted().handOn(on), seats(on)));
        }
        return feet;
    }

    /** The posts over a crank, those together that put the saddle on the same point. */
    private List<List<Seat>> seats(Bike on) {
        Map<Object, List<Seat>> byPoint = new LinkedHashMap<>();
        List<Part> posts = choices(Category.POSTS);
        for (int i = 0; i < posts.size(); i++) {
            Part part = posts.get(i);
            Geometry geometry = Geometry.of(on.redraw(part.numbers()));
            Held held = Held.of(isSitKnown() ? bounds.margins(Concern.SEAT, geometry) : List.of(), changed(part));
            byPoint.computeIfAbsent(point(geometry, i), point -> new ArrayList<>())
                    .add(new Seat(i, part, held));
        }
        return List.copyOf(byPoint.values());
    }

    /** How far a post leaves the saddle from its point; where that is not known, each post stands for itself. */
    private Object point(Geometry geometry, int post) {
        boolean known = isSitKnown()
                && !Double.isNaN(ContactMeasures.SIT_MISS.read(geometry).orNaN());
        if (!known) {
            return post;
        }
        Point off = ContactMeasures.sitOff(geometry.bike());
        return List.of(Math.round(off.x() / SAME_MM), Math.round(off.y() / SAME_MM));
    }
}
