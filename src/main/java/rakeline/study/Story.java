package rakeline.study;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import rakeline.geometry.Inputs;
import rakeline.geometry.Setting;
import rakeline.quantity.Input;
import rakeline.quantity.Numbers;
import rakeline.quantity.Unit;

/**
 * One way in which a number can have gone wrong.
 *
 * @param because empty for a slip like any other
 * @param left the differences that remain, at the best value and not at the rounded one
 * @param weight how likely, compared with other stories: what rounding makes of the rest, times how usual it is
 */
record Story(double wouldBe, String because, Numbers left, double weight) {
    /** Usual size of an error in lengths and angles, and in the seat angle's height, of which charts seldom speak. */
    private static final double USUAL_MM = 8;

    private static final double USUAL_DEG = 0.8;
    private static final double USUAL_HEIGHT_MM = 100;

    /** One wheel's size is seldom wrong alone. */
    private static final double ONE_WHEEL = 0.5;

    /** All stories of a number that bring every residual within its tolerance. */
    static Stream<Story> of(Fit fit, Setting setting) {
        return Stream.concat(chance(fit, setting).stream(), slips(fit, setting));
    }

    private static Optional<Story> chance(Fit fit, Setting setting) {
        OptionalDouble best = Slip.isSizeByName(setting) ? OptionalDouble.empty() : fit.best();
        OptionalDouble settled = best.isPresent() ? fit.settled(best.getAsDouble()) : best;
        return settled.isEmpty()
                ? Optional.empty()
                : Optional.of(new Story(
                        settled.getAsDouble(),
                        "",
                        Numbers.of(fit.left(best.getAsDouble())),
                        share(setting) * chance(fit, setting, best.getAsDouble())));
    }

    /**
     * The likelihood over all sizes of error: usual sizes spread as a Cauchy distribution, so that a large error is
     * rare and not impossible; the integral by its curvature at the best value.
     */
    private static double chance(Fit fit, Setting setting, double best) {
        double usual = usual(setting.inputs().get(0));
        double error = (best - fit.charted()) / usual;
        double density = 1 / (Math.PI * usual * (1 + error * error));
        return fit.likelihood(best) * density * fit.spread(best) * Math.sqrt(2 * Math.PI);
    }

    private static Stream<Story> slips(Fit fit, Setting setting) {
        return Slip.of(setting, fit.bike()).stream()
                .filter(slip -> fit.agrees(slip.wouldBe()))
                .map(slip -> new Story(
                        fit.settled(slip.wouldBe()).orElse(slip.wouldBe()),
                        slip.because(),
                        Numbers.of(fit.left(slip.wouldBe())),
                        slip.share() * share(setting) * fit.likelihood(slip.wouldBe())));
    }

    private static double share(Setting setting) {
        return setting.isWheel() && setting.inputs().size() == 1 ? ONE_WHEEL : 1;
    }

    private static double usual(Input input) {
        if (input.equals(Inputs.SEAT_ANGLE_AT)) {
            return USUAL_HEIGHT_MM;
        }
        return input.quantity().unit() == Unit.DEGREE ? USUAL_DEG : USUAL_MM;
    }
}
