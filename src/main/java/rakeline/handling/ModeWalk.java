package rakeline.handling;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rakeline.quantity.Numbers;

/** Follows the two factors of the characteristic polynomial from standstill up, in steps that Newton's method holds. */
final class ModeWalk {
    /** Of √(g w): the speed at which a bicycle changes its ways. */
    private static final double STEP = 0.02;

    private static final double FINEST = 1e-4;

    /** Of the size of the roots: a factor that moves farther in one step is another one. */
    private static final double FAR = 0.5;

    private final Characteristic characteristic;
    private final double step;

    private ModeWalk(LinearBicycle bicycle) {
        this.characteristic = Characteristic.of(bicycle);
        BicycleParameters parameters = bicycle.parameters();
        this.step = STEP * Math.sqrt(parameters.g() * parameters.w());
    }

    /**
     * The modes at each speed.
     *
     * @param ascending m/s, from 0 up
     */
    static List<Modes> at(LinearBicycle bicycle, Numbers ascending) {
        ModeWalk walk = new ModeWalk(bicycle);
        List<Modes> modes = new ArrayList<>(ascending.size());
        Factors factors = walk.atRest();
        double here = 0;
        for (int i = 0; i < ascending.size(); i++) {
            factors = walk.along(factors, here, ascending.at(i));
            here = ascending.at(i);
            modes.add(factors.modes(here));
        }
        return modes;
    }

    /** The factors at one speed, m/s. */
    static Factors factorsAt(LinearBicycle bicycle, double speedMps) {
        ModeWalk walk = new ModeWalk(bicycle);
        return walk.along(walk.atRest(), 0, speedMps);
    }

    private Factors atRest() {
        return Factors.atRest(characteristic.at(0));
    }

    private Factors along(Factors from, double here, double target) {
        Factors factors = from;
        double speed = here;
        while (speed < target) {
            double next = target - speed <= step * 1.000001 ? target : speed + step;
            factors = between(factors, speed, next);
            speed = next;
        }
        return factors;
    }

    /** In one step, or where that is too long in two. */
    private Factors between(Factors from, double here, double there) {
        Quartic quartic = characteristic.at(there);
        Optional<Factors> solved = from.solved(quartic).filter(found -> near(from, found));
        if (solved.isPresent()) {
            return solved.get();
        }
        if (there - here < FINEST * step) {
            Factors anew = Factors.fromRoots(quartic);
            return anew.solved(quartic).orElse(anew);
        }
        double middle = (here + there) / 2;
        return between(between(from, here, middle), middle, there);
    }

    private static boolean near(Factors from, Factors to) {
        return from.distance(to) <= FAR * (1 + Math.abs(from.p()) + Math.abs(from.r()));
    }
}
