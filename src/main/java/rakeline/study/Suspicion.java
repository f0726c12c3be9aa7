package rakeline.study;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import rakeline.geometry.Setting;
import rakeline.quantity.Numbers;

/**
 * One number supposed wrong.
 *
 * @param stories how; at least one
 */
record Suspicion(Setting setting, double charted, List<Story> stories) {
    Suspicion {
        stories = List.copyOf(stories);
    }

    /** The suspicion of a number; none where no value of it brings every residual within its tolerance. */
    static Optional<Suspicion> of(ChartedBike chart, Rounding rounding, Setting setting) {
        Fit fit = new Fit(chart, rounding, setting);
        List<Story> stories = Story.of(fit, setting).toList();
        return stories.isEmpty() ? Optional.empty() : Optional.of(new Suspicion(setting, fit.charted(), stories));
    }

    double weight() {
        return stories.stream().mapToDouble(Story::weight).sum();
    }

    Story likeliest() {
        return stories.stream().max(Comparator.comparingDouble(Story::weight)).orElseThrow();
    }

    /** What the number leaves over when it is set free. */
    Numbers left() {
        return stories.get(0).left();
    }

    /** As it is told, with the keys of those that cannot be told from it. */
    Suspect asSuspect(List<String> sameAs) {
        Story likeliest = likeliest();
        return new Suspect(setting.quantity(), charted, likeliest.wouldBe(), sameAs, likeliest.because());
    }
}
