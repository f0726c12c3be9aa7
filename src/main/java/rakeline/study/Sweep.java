package rakeline.study;

import java.util.List;
import java.util.Optional;
import rakeline.geometry.Bike;
import rakeline.geometry.Setting;
import rakeline.handling.Ride;
import rakeline.quantity.Measure;
import rakeline.quantity.Numbers;
import rakeline.quantity.Refusal;

/**
 * One input across a range, with measures tracked and, if asked, one measure held by solving for another input. Every
 * other input stays as it is.
 *
 * @param start the bike as it is, and who rides it
 * @param steps the swept values, in order
 * @param tracks measures, or inputs read as such
 */
public record Sweep(
        Ride start, Setting vary, Numbers steps, Mode mode, Optional<Hold> hold, List<Measure<Ride>> tracks) {

    public Sweep {
        tracks = List.copyOf(tracks);
        vary.quantity().check(steps.at(0));
        vary.quantity().check(steps.at(steps.size() - 1));
        if (tracks.isEmpty()) {
            throw new Refusal("a sweep tracks at least one measure.");
        }
        if (hold.isPresent() && hold.get().by().inputs().stream().anyMatch(vary.inputs()::contains)) {
            throw new Refusal("the sweep varies " + vary.quantity().withKey() + " and cannot solve for it as well.");
        }
    }

    /**
     * Runs it on all cores.
     *
     * @throws Refusal where the bike lacks what a measure needs, or the held measure has no value at the start
     */
    public Swept run() {
        return run(Crew.onAllCores(), Progress.UNWATCHED);
    }

    /**
     * Runs it.
     *
     * @return the same with any crew, to the last bit
     * @throws Refusal where the bike lacks what a measure needs, or the held measure has no value at the start
     * @throws java.util.concurrent.CancellationException where the progress does not go on
     */
    public Swept run(Crew crew, Progress progress) {
        return SweepRun.of(this, crew, progress);
    }

    /**
     * Runs it on all cores, and carries the uncertainties of the inputs, the swept one among them, to every step.
     *
     * @throws Refusal where the bike lacks what a measure needs, or the held measure has no value at the start
     */
    public Swept runWithUncertainty() {
        return runWithUncertainty(Crew.onAllCores(), Progress.UNWATCHED);
    }

    /**
     * Runs it, and carries the uncertainties of the inputs, the swept one among them, to every step.
     *
     * @return the same with any crew, to the last bit
     * @throws Refusal where the bike lacks what a measure needs, or the held measure has no value at the start
     * @throws java.util.concurrent.CancellationException where the progress does not go on
     */
    public Swept runWithUncertainty(Crew crew, Progress progress) {
        return SweepRun.withUncertainty(this, crew, progress);
    }

    /** The swept input's value on the bike as it is. */
    public double here() {
        return vary.valueIn(bike());
    }

    Variation variation() {
        return Variation.of(bike(), vary, mode);
    }

    /** The bike as it is. */
    public Bike bike() {
        return start.bike();
    }
}
