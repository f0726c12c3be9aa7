package rakeline.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rakeline.geometry.Bike;
import rakeline.handling.Ride;
import rakeline.quantity.Measure;
import rakeline.quantity.Numbers;
import rakeline.quantity.Refusal;
import rakeline.quantity.Sentences;

/**
 * How much each measure changes per unit of each input, at the bike as it is, every other input as it is.
 *
 * @param start the bike as it is, and who rides it
 */
public record Sensitivity(Ride start, List<Varied> inputs, List<Measure<Ride>> tracks) {
    /** Far above the last digit of every measure, far below the bend of any. */
    private static final double STEP = 0.01;

    public Sensitivity {
        inputs = List.copyOf(inputs);
        tracks = List.copyOf(tracks);
        if (inputs.isEmpty() || tracks.isEmpty()) {
            throw new Refusal("a sensitivity needs at least one input and one measure.");
        }
        for (Varied input : inputs) {
            if (Double.isNaN(input.setting().valueIn(start.bike()))) {
                throw new Refusal(Sentences.upper(input.setting().quantity().withKey()) + " is not given in "
                        + start.bike().name() + "; accepted is an input that has a value.");
            }
        }
    }

    /**
     * Runs it.
     *
     * @throws Refusal where the bike lacks what a measure needs
     */
    public Sensitivities run() {
        tracks.forEach(track -> SweepRun.checkComplete(track, start));
        List<Numbers> columns = new ArrayList<>();
        for (Varied input : inputs) {
            Along along = Along.plain(new Variation(start.bike(), List.of(input)));
            columns.add(Numbers.generate(tracks.size(), i -> slope(along, input, tracks.get(i))));
        }
        return new Sensitivities(this, columns);
    }

    private double slope(Along along, Varied input, Measure<Ride> track) {
        double here = input.setting().valueIn(start.bike());
        return Slope.at0(by -> read(along.at(here + by), track), STEP);
    }

    private double read(Optional<Bike> bike, Measure<Ride> track) {
        return bike.isEmpty() ? Double.NaN : track.read(start.on(bike.get())).orNaN();
    }
}
