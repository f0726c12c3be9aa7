package rakeline.handling;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import rakeline.geometry.SideView;
import rakeline.quantity.Reading;
import rakeline.quantity.Refusal;
import rakeline.rider.BodyPart;
import rakeline.rider.Ridden;

/**
 * A bicycle and its rider as the four rigid parts of the linear model. The rider is rigid and belongs to the frame, but for
 * the share of forearms and hands that the bar carries.
 *
 * @param parameters the 25 numbers
 * @param used every mass, centre and moment that they rest on besides the geometry
 * @param riderKg mass of the rider in them; 0 where there is none
 * @param armsOnBarKg of it, what moves with the bar
 */
public record Mount(BicycleParameters parameters, List<MassUsed> used, double riderKg, double armsOnBarKg) {
    /** Standard gravity as the published benchmark has it, m/s². */
    private static final double GRAVITY_MPS2 = 9.81;

    public Mount {
        used = List.copyOf(used);
    }

    /**
     * Weighs it.
     *
     * @throws Refusal for a rider who cannot sit like this, or moments of inertia that no body has
     */
    static Mount of(Ridden ridden) {
        Reading mass = massKg(ridden);
        if (!(mass instanceof Reading.Known)) {
            String who = ridden.rider()
                    .map(rider -> " with " + rider.name() + " on it")
                    .orElse("");
            throw new Refusal(ridden.geometry().bike().name() + who + " cannot be weighed: " + mass.reason() + ".");
        }
        return of(ridden, ridden.body());
    }

    /** Mass of bicycle and rider, kg; where it cannot be said how it moves, why. */
    static Reading massKg(Ridden ridden) {
        Reading rider = ridden.rider().isEmpty() ? Reading.of(0) : ridden.posedKg();
        BicycleMasses masses = BicycleMasses.of(ridden.geometry());
        return rider instanceof Reading.Known known
                ? masses.impossible().map(Reading::nowhere).orElseGet(() -> Reading.of(masses.massKg() + known.value()))
                : rider;
    }

    static Mount of(Ridden ridden, List<BodyPart> body) {
        SideView side = ridden.geometry().side();
        BicycleMasses masses = BicycleMasses.of(ridden.geometry());
        List<Lump> steered = new ArrayList<>(List.of(masses.fork()));
        List<Lump> rest = new ArrayList<>(List.of(masses.frame()));
        for (BodyPart part : body) {
            double onBar = isForearmOrHand(part) ? masses.handShare() : 0;
            steered.add(Lump.of(part).share(onBar));
            rest.add(Lump.of(part).share(1 - onBar));
        }
        double rear = side.rearAxleXMm() / 1000;
        double ground = side.bbHeightMm() / 1000;
        BicycleParameters parameters = new BicycleParameters(
                side.wheelbaseMm() / 1000,
                side.trailMm() / 1000,
                Math.atan2(side.cosHead(), side.sinHead()),
                GRAVITY_MPS2,
                masses.rear(),
                Lump.sum(rest).body("B", rear, ground),
                Lump.sum(steered).body("H", rear, ground),
                masses.front());
        return new Mount(
                parameters,
                masses.used(),
                body.stream().mapToDouble(BodyPart::massKg).sum(),
                Lump.sum(steered).mass() - masses.fork().mass());
    }

    /** Whether any number is a default. */
    public boolean restsOnDefaults() {
        return used.stream().anyMatch(mass -> !mass.given());
    }

    private static boolean isForearmOrHand(BodyPart part) {
        String name = part.name().toLowerCase(Locale.ROOT);
        return name.contains("forearm") || name.contains("hand");
    }
}
