package rakeline.handling;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rakeline.quantity.Decimals;
import rakeline.quantity.Lazy;
import rakeline.quantity.Numbers;
import rakeline.quantity.Refusal;

/** What the linear bicycle does hands off, each part solved when it is first asked for. Speeds in m/s. */
public final class Stability {
    /** The highest speed that is looked at, m/s. */
    public static final double TOP_SPEED_MPS = 100;

    private final LinearBicycle bicycle;
    private final CriticalSpeeds critical;
    private final Lazy<OptionalDouble> weave;
    private final Lazy<Optional<SelfStable>> selfStable;

    private Stability(LinearBicycle bicycle) {
        this.bicycle = bicycle;
        this.critical = CriticalSpeeds.of(bicycle);
        this.weave = Lazy.of(critical::weave);
        this.selfStable = Lazy.of(critical::selfStable);
    }

    public static Stability of(BicycleParameters parameters) {
        return new Stability(LinearBicycle.of(parameters));
    }

    public LinearBicycle bicycle() {
        return bicycle;
    }

    /** The highest speed at which a growing oscillation turns into one that dies out. */
    public OptionalDouble weaveSpeedMps() {
        return weave.get();
    }

    /** Angular frequency of the oscillation at the weave speed, rad/s. */
    public OptionalDouble weaveFrequencyRadPerS() {
        OptionalDouble speed = weave.get();
        return speed.isPresent() ? OptionalDouble.of(critical.frequency(speed.getAsDouble())) : speed;
    }

    /** The speed at which the constant term of the characteristic polynomial vanishes. */
    public OptionalDouble capsizeSpeedMps() {
        return critical.capsize();
    }

    /** The lowest speed at which two real roots meet and begin to oscillate. */
    public OptionalDouble doubleRootSpeedMps() {
        return critical.doubleRoot();
    }

    /** The first stretch of speeds, from 0 up, at which every motion dies out. */
    public Optional<SelfStable> selfStable() {
        return selfStable.get();
    }

    /**
     * The modes at each speed, followed from standstill.
     *
     * @param ascending m/s, 0..100
     * @throws Refusal for a speed out of range, or lower than the one before
     */
    public List<Modes> modes(Numbers ascending) {
        for (int i = 0; i < ascending.size(); i++) {
            double speed = ascending.at(i);
            if (!(speed >= 0 && speed <= TOP_SPEED_MPS) || (i > 0 && speed < ascending.at(i - 1))) {
                throw new Refusal(
                        "a speed is " + Decimals.shown(speed) + " m/s; accepted are speeds that rise, 0..100 m/s.");
            }
        }
        return ModeWalk.at(bicycle, ascending);
    }

    /** The modes at one speed, m/s. */
    public Modes modes(double speedMps) {
        return modes(Numbers.of(speedMps)).get(0);
    }

    @Override
    public String toString() {
        return "weave speed " + shown(weaveSpeedMps()) + ", capsize speed " + shown(capsizeSpeedMps());
    }

    private static String shown(OptionalDouble speed) {
        return speed.isPresent() ? Decimals.fixed(speed.getAsDouble(), 3) + " m/s" : "none";
    }
}
