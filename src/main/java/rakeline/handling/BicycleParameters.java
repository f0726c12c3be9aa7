package rakeline.handling;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rakeline.quantity.Decimals;
import rakeline.quantity.Refusal;
import rakeline.quantity.Sentences;

/**
 * The 25 numbers of the linear bicycle and gravity, in SI units and the axes of this package; the names are the
 * source's.
 *
 * @param w wheelbase, m, above 0
 * @param c trail, m
 * @param lambdaRad tilt of the steering axis from the vertical, 90° minus the head angle, above −π/2 and below π/2
 * @param g gravity, m/s², above 0
 * @param rear the rear wheel, R
 * @param frame frame with whatever does not steer, rider included, B
 * @param fork fork with bar and stem, H
 * @param front the front wheel, F
 */
public record BicycleParameters(
        double w, double c, double lambdaRad, double g, Wheel rear, Body frame, Body fork, Wheel front) {

    /**
     * A wheel.
     *
     * @param letter as the source has it: R or F
     * @param radius m, above 0
     * @param mass kg, 0 or above
     * @param ixx about a diameter, kg m², above 0
     * @param iyy about its axle, kg m², above 0
     */
    public record Wheel(String letter, double radius, double mass, double ixx, double iyy) {
        public Wheel {
            above(0, "r" + letter, radius, "a radius");
            notNegative("m" + letter, mass);
            Map<String, Double> moments = Map.of("xx", ixx, "yy", iyy);
            possible(letter, moments, ixx > 0 && iyy > 0, "above 0");
        }

        private void put(Map<String, Double> numbers) {
            numbers.put("r" + letter, radius);
            numbers.put("m" + letter, mass);
            numbers.put("I" + letter + "xx", ixx);
            numbers.put("I" + letter + "yy", iyy);
        }

        private List<String> cautions() {
            return triangle("I" + letter, ixx, iyy, ixx);
        }
    }

    /**
     * A rigid body.
     *
     * @param letter as the source has it: B or H
     * @param x centre of mass ahead of the rear contact, m
     * @param z centre of mass below the ground, so that it is negative on a bicycle, m
     * @param mass kg, 0 or above
     * @param ixx kg m²; the matrix of moments about the centre of mass is positive definite
     */
    public record Body(String letter, double x, double z, double mass, double ixx, double ixz, double iyy, double izz) {
        public Body {
            finite("x" + letter, x);
            finite("z" + letter, z);
            notNegative("m" + letter, mass);
            Map<String, Double> moments = Map.of("xx", ixx, "xz", ixz, "yy", iyy, "zz", izz);
            boolean holds = ixx > 0 && iyy > 0 && ixx * izz > ixz * ixz;
            possible(letter, moments, holds, "above 0, and xx times zz above xz squared, as of any body");
        }

        private void put(Map<String, Double> numbers) {
            numbers.put("x" + letter, x);
            numbers.put("z" + letter, z);
            numbers.put("m" + letter, mass);
            numbers.put("I" + letter + "xx", ixx);
            numbers.put("I" + letter + "xz", ixz);
            numbers.put("I" + letter + "yy", iyy);
            numbers.put("I" + letter + "zz", izz);
        }

        private List<String> cautions() {
            List<String> cautions = new ArrayList<>();
            if (z >= 0 && mass > 0) {
                cautions.add("z" + letter + " is " + Decimals.shortest(z) + ": z points down, so that this centre of"
                        + " mass lies at or below the ground.");
            }
            double middle = (ixx + izz) / 2;
            double half = Math.hypot((ixx - izz) / 2, ixz);
            cautions.addAll(triangle("I" + letter, middle + half, iyy, middle - half));
            return cautions;
        }
    }

    public BicycleParameters {
        above(0, "mR + mB + mH + mF", rear.mass() + frame.mass() + fork.mass() + front.mass(), "a mass in kg");
        above(0, "w", w, "a wheelbase");
        finite("c", c);
        above(0, "g", g, "gravity");
        if (!(Math.abs(lambdaRad) < Math.PI / 2)) {
            throw new Refusal("lambdaRad is " + Decimals.shortest(lambdaRad)
                    + "; accepted is above −π/2 and below π/2, the steering axis from the vertical.");
        }
    }

    /** The numbers by the symbols of a dynamics file. */
    public Map<String, Double> bySymbol() {
        Map<String, Double> numbers = new LinkedHashMap<>();
        numbers.put("w", w);
        numbers.put("c", c);
        numbers.put("lambdaRad", lambdaRad);
        numbers.put("g", g);
        rear.put(numbers);
        frame.put(numbers);
        fork.put(numbers);
        front.put(numbers);
        return Collections.unmodifiableMap(numbers);
    }

    /** What is possible, and still worth a second look. */
    public List<String> cautions() {
        List<String> all = new ArrayList<>(rear.cautions());
        all.addAll(frame.cautions());
        all.addAll(fork.cautions());
        all.addAll(front.cautions());
        return List.copyOf(all);
    }

    private static List<String> triangle(String name, double one, double two, double three) {
        double largest = Math.max(one, Math.max(two, three));
        if (one + two + three - largest >= largest * (1 - 1e-12)) {
            return List.of();
        }
        return List.of(name + ": the largest principal moment, " + Decimals.fixed(largest, 4)
                + " kg m², exceeds the sum of the other two, which no solid body does; measured sets do so within"
                + " their error, and this one is taken as it is.");
    }

    private static void finite(String name, double value) {
        if (!Double.isFinite(value)) {
            throw new Refusal(name + " is " + value + "; accepted is a finite number.");
        }
    }

    private static void above(double least, String name, double value, String what) {
        if (!(value > least) || !Double.isFinite(value)) {
            throw new Refusal(name + " is " + Decimals.shortest(value) + "; accepted is " + what + " above "
                    + Decimals.shortest(least) + ".");
        }
    }

    private static void notNegative(String name, double mass) {
        if (!(mass >= 0) || !Double.isFinite(mass)) {
            throw new Refusal(name + " is " + Decimals.shortest(mass) + "; accepted is a mass of 0 kg or above.");
        }
    }

    private static void possible(String letter, Map<String, Double> moments, boolean holds, String accepted) {
        moments.forEach((axes, moment) -> finite("I" + letter + axes, moment));
        if (!holds) {
            List<String> each = moments.entrySet().stream()
                    .sorted(Map.Entry.comparingByKey())
                    .map(moment -> "I" + letter + moment.getKey() + " is " + Decimals.shown(moment.getValue()))
                    .toList();
            throw new Refusal(Sentences.list(each) + " kg m²; accepted are moments of inertia " + accepted + ".");
        }
    }
}
