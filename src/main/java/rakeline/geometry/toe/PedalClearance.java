package rakeline.geometry.toe;

import java.util.Optional;

/**
 * Room between the centre of a pedal and the turned front tyre or its guard, whatever is worn.
 *
 * <p>Source: 16 CFR 1512.17(d).
 */
public final class PedalClearance {
    private final FrontWheel wheel;
    private final Pedals pedals;

    public PedalClearance(FrontWheel wheel, Pedals pedals) {
        this.wheel = wheel;
        this.pedals = pedals;
    }

    /**
     * From the pedal's centre forward to the rearmost point in which the whole line through it, parallel to x, meets
     * tyre or guard: least over the steering angles and crank angles −90..90°, mm; negative where the pedal lies inside
     * or ahead of it. Nothing where that line meets it at no angle.
     */
    public Optional<Place> pedalToTyre() {
        return Room.least(wheel, Toe.of(pedals, wheel));
    }

    /** The same with the crank pointing straight forward. */
    public Optional<Place> pedalToTyreLevel() {
        return Room.least(wheel, Toe.of(pedals, wheel).level());
    }
}
