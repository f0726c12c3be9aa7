package rakeline.study;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rakeline.geometry.Bike;
import rakeline.geometry.Inputs;
import rakeline.geometry.Setting;
import rakeline.handling.Ride;
import rakeline.quantity.Measure;
import rakeline.quantity.Reading;
import rakeline.quantity.Refusal;

/**
 * The sizes of a family under a floor: the head angle and offset that each then needs. A size that clears the floor
 * keeps its head angle; one that does not takes the nearest head angle at which the floor is just met.
 *
 * @param sizes in order, each with who rides it
 * @param floor the least that a measure may have
 * @param holding what is held while the head angle changes
 * @param tracks what follows, side by side
 */
public record SizeRun(List<Ride> sizes, Target floor, Holding holding, List<Measure<Ride>> tracks) {
    private static final Setting HEAD = Setting.of(Inputs.HEAD_ANGLE);
    private static final Setting OFFSET = Setting.of(Inputs.FORK_OFFSET);

    private static final List<String> USUAL = List.of(
            "frontCentreMm",
            "toeRoomMm",
            "trailMm",
            "wheelFlopMm",
            "wheelbaseMm",
            "frame.seatAngleDeg",
            "cockpit.stemLengthMm",
            "handYMm");

    /** What is held. */
    public sealed interface Holding {
        /**
         * A measure, by solving for the fork's offset.
         *
         * @param value NaN for each size's own
         */
        record ByOffset(Measure<Ride> measure, double value) implements Holding {}

        /**
         * The fork's offset itself.
         *
         * @param offsetMm NaN for each size's own
         */
        record Offset(double offsetMm) implements Holding {}

        /**
         * Of a key: the fork's offset itself, or a measure.
         *
         * @param value NaN for each size's own
         * @throws Refusal for an unknown key, naming the nearest
         */
        static Holding of(Vocabulary vocabulary, String key, double value) {
            return key.equals(OFFSET.key()) ? new Offset(value) : new ByOffset(vocabulary.measure(key), value);
        }
    }

    public SizeRun {
        sizes = List.copyOf(sizes);
        tracks = List.copyOf(tracks);
        if (sizes.isEmpty()) {
            throw new Refusal("a size run needs at least one bike.");
        }
    }

    /** What follows, where nothing else is asked for: of the usual keys those that every size has inputs for. */
    public static List<Measure<Ride>> usualTracks(Vocabulary vocabulary, List<Ride> sizes) {
        return USUAL.stream()
                .map(vocabulary::tracked)
                .filter(track -> sizes.stream().noneMatch(size -> track.read(size) instanceof Reading.Lacking))
                .toList();
    }

    /**
     * Runs it, size by size on all cores.
     *
     * @throws Refusal where a bike lacks what a measure needs
     */
    public Sized run() {
        return run(Crew.onAllCores(), Progress.UNWATCHED);
    }

    /**
     * Runs it.
     *
     * @return the same with any crew
     * @throws Refusal where a bike lacks what a measure needs
     * @throws java.util.concurrent.CancellationException where the progress does not go on
     */
    public Sized run(Crew crew, Progress progress) {
        sizes.forEach(this::checkComplete);
        return new Sized(this, crew.map(sizes.size(), i -> size(sizes.get(i)), progress));
    }

    private void checkComplete(Ride size) {
        SweepRun.checkComplete(floor.measure(), size);
        tracks.forEach(track -> SweepRun.checkComplete(track, size));
        if (holding instanceof Holding.ByOffset by) {
            SweepRun.checkComplete(by.measure(), size);
        }
    }

    private Sized.Size size(Ride size) {
        Optional<Bike> held = held(size);
        if (held.isPresent() && floor.excess(size.on(held.get())) >= 0) {
            return new Sized.Size(size, held, true, "");
        }
        double own = size.bike().get(Inputs.HEAD_ANGLE);
        Sought sought = new Seek(drawn(size), Span.of(Varied.of(HEAD)), floor, hold()).run();
        return nearest(sought, own)
                .map(bike -> new Sized.Size(size, Optional.of(bike), false, ""))
                .orElseGet(() -> new Sized.Size(size, Optional.empty(), false, sought.sentence()));
    }

    /** The size at its own head angle with what is held in force; empty where no offset holds it. */
    private Optional<Bike> held(Ride size) {
        Ride drawn = drawn(size);
        if (hold().isEmpty()) {
            return Optional.of(drawn.bike());
        }
        Hold settled = SweepRun.settle(hold().get(), drawn);
        Target target = new Target(settled.measure(), settled.target());
        if (target.excess(drawn) == 0) {
            return Optional.of(drawn.bike());
        }
        return nearest(
                new Seek(drawn, Span.of(Varied.of(OFFSET)), target, Optional.empty()).run(),
                drawn.bike().get(Inputs.FORK_OFFSET));
    }

    private static Optional<Bike> nearest(Sought sought, double to) {
        return sought.solutions().stream()
                .min(Comparator.comparingDouble(solution -> Math.abs(solution.at() - to)))
                .map(Sought.Solution::bike);
    }

    private Ride drawn(Ride size) {
        boolean given = holding instanceof Holding.Offset held && !Double.isNaN(held.offsetMm());
        return given
                ? size.on(size.bike().redraw(Map.of(Inputs.FORK_OFFSET, ((Holding.Offset) holding).offsetMm())))
                : size;
    }

    private Optional<Hold> hold() {
        return holding instanceof Holding.ByOffset by
                ? Optional.of(new Hold(by.measure(), by.value(), OFFSET))
                : Optional.empty();
    }
}
