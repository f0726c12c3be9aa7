package rakeline.study;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import rakeline.handling.Ride;
import rakeline.quantity.Measure;
import rakeline.quantity.Numbers;
import rakeline.quantity.Refusal;
import rakeline.quantity.Sentences;

/**
 * How much each measure changes per unit of each input, at the bike as it is, every other input as it is.
 * Steps belong to the size of each input and are shortened until slopes agree; they may leave the range that is
 * accepted from a person, but go to one side alone where no bicycle lies on the other. What a slope is good to is told with it.
 *
 * @param start the bike as it is, and who rides it
 */
public record Sensitivity(Ride start, List<Varied> inputs, List<Measure<Ride>> tracks) {
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
     * Runs it on all cores.
     *
     * @throws Refusal where the bike lacks what a measure needs
     */
    public Sensitivities run() {
        return run(Crew.onAllCores(), Progress.UNWATCHED);
    }

    /**
     * Runs it.
     *
     * @return the same with any crew
     * @throws Refusal where the bike lacks what a measure needs
     * @throws java.util.concurrent.CancellationException where the progress does not go on
     */
    public Sensitivities run(Crew crew, Progress progress) {
        tracks.forEach(track -> SweepRun.checkComplete(track, start));
        List<List<Derivative>> found = crew.map(inputs.size(), i -> slopes(inputs.get(i)), progress);
        return new Sensitivities(this, columns(found, Derivative::slope), columns(found, Derivative::error));
    }

    private static List<Numbers> columns(List<List<Derivative>> found, ToDoubleFunction<Derivative> read) {
        return found.stream()
                .map(column -> Numbers.generate(column.size(), i -> read.applyAsDouble(column.get(i))))
                .toList();
    }

    /** The slope of each measure; a bike is drawn once for all of them. */
    private List<Derivative> slopes(Varied input) {
        Along along = Along.plain(new Variation(start.bike(), List.of(input)));
        double here = input.setting().valueIn(start.bike());
        double step = Derivative.step(input.setting().quantity(), here);
        Map<Double, Optional<Ride>> known = new HashMap<>(Map.of(0.0, Optional.of(start)));
        return tracks.stream()
                .map(track -> Derivative.at0(
                        by -> known.computeIfAbsent(
                                        by, off -> along.at(here + off).map(start::on))
                                .map(ride -> track.read(ride).orNaN())
                                .orElse(Double.NaN),
                        step,
                        Derivative.FINE))
                .toList();
    }
}
