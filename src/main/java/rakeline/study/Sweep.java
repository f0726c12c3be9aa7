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
     * Runs it.
     *
     * @throws Refusal where the bike lacks what a measure needs, or the held measure has no value at the start
     */
    public Swept run() {
        return SweepRun.of(this);
    }

    /**
     * Runs it, and carries the uncertainties of the inputs, the swept one among them, to every step.
     *
     * @throws Refusal where the bike lacks what a measure needs, or the held measure has no value at the start
     */
    public Swept runWithUncertainty() {
        return SweepRun.withUncertainty(this);
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
