package rakeline.handling;

/**
 * The characteristic polynomial of a {@link LinearBicycle}, its coefficients as functions of speed: {@code a s⁴ + v b s³
 * + (c0 + v² c2) s² + v (d1 + v² d3) s + e0 + v² e2}.
 */
record Characteristic(double a, double b, double c0, double c2, double d1, double d3, double e0, double e2) {

    static Characteristic of(LinearBicycle bicycle) {
        double g = bicycle.parameters().g();
        Square m = bicycle.m();
        Square c = bicycle.c1();
        Square k0 = bicycle.k0().times(g);
        Square k2 = bicycle.k2();
        return new Characteristic(
                m.determinant(),
                m.mixed(c),
                m.mixed(k0),
                m.mixed(k2) + c.determinant(),
                c.mixed(k0),
                c.mixed(k2),
                k0.determinant(),
                k0.mixed(k2));
    }

    /** The polynomial at a speed, divided by its first coefficient. */
    Quartic at(double v) {
        double v2 = v * v;
        return new Quartic(v * b / a, (c0 + v2 * c2) / a, v * (d1 + v2 * d3) / a, (e0 + v2 * e2) / a);
    }
}
