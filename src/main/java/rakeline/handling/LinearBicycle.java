package rakeline.handling;

/**
 * The linear equations of lean φ and steer δ, hands off, about upright straight running at a steady speed v: {@code M
 * q'' + v C1 q' + (g K0 + v² K2) q = f}, q = (φ, δ), f = (lean torque, steer torque).
 *
 * <p>Source: Meijaard, Papadopoulos, Ruina and Schwab 2007, Proc. R. Soc. A 463:1955-1982, appendix A. Rigid wheels that
 * roll without slip on knife edges, rigid frames, no friction, small angles.
 */
public record LinearBicycle(BicycleParameters parameters, Square m, Square c1, Square k0, Square k2) {

    public static LinearBicycle of(BicycleParameters p) {
        Whole t = Whole.of(p);
        Front a = Front.of(p);
        double sin = Math.sin(p.lambdaRad());
        double cos = Math.cos(p.lambdaRad());
        double mu = p.c() / p.w() * cos;
        double spinFront = p.front().iyy() / p.front().radius();
        double spin = p.rear().iyy() / p.rear().radius() + spinFront;
        double sa = a.m * a.u + mu * t.m * t.x;
        double mixed = a.lx + mu * t.ixz;
        double steered = mu * spin + spinFront * cos;
        return new LinearBicycle(
                p,
                new Square(t.ixx, mixed, mixed, a.ll + 2 * mu * a.lz + mu * mu * t.izz),
                new Square(
                        0,
                        steered + t.ixz / p.w() * cos - mu * t.m * t.z,
                        -steered,
                        a.lz / p.w() * cos + mu * (sa + t.izz / p.w() * cos)),
                new Square(t.m * t.z, -sa, -sa, -sa * sin),
                new Square(0, (spin - t.m * t.z) * cos / p.w(), 0, (sa + spinFront * sin) * cos / p.w()));
    }

    /** g K0 + v² K2, N m/rad. */
    public Square stiffness(double speedMps) {
        return k0.times(parameters.g()).plus(k2.times(speedMps * speedMps));
    }

    /** v C1, N m s/rad. */
    public Square damping(double speedMps) {
        return c1.times(speedMps);
    }

    /** Mass, centre and moments of the whole bicycle about the rear contact. */
    private record Whole(double m, double x, double z, double ixx, double ixz, double izz) {
        static Whole of(BicycleParameters p) {
            BicycleParameters.Wheel r = p.rear();
            BicycleParameters.Body b = p.frame();
            BicycleParameters.Body h = p.fork();
            BicycleParameters.Wheel f = p.front();
            double m = r.mass() + b.mass() + h.mass() + f.mass();
            return new Whole(
                    m,
                    (b.x() * b.mass() + h.x() * h.mass() + p.w() * f.mass()) / m,
                    (-r.radius() * r.mass() + b.z() * b.mass() + h.z() * h.mass() - f.radius() * f.mass()) / m,
                    r.ixx()
                            + b.ixx()
                            + h.ixx()
                            + f.ixx()
                            + roll(r)
                            + roll(f)
                            + square(b.z()) * b.mass()
                            + square(h.z()) * h.mass(),
                    b.ixz()
                            + h.ixz()
                            - b.mass() * b.x() * b.z()
                            - h.mass() * h.x() * h.z()
                            + f.mass() * p.w() * f.radius(),
                    r.ixx()
                            + b.izz()
                            + h.izz()
                            + f.ixx()
                            + b.mass() * square(b.x())
                            + h.mass() * square(h.x())
                            + f.mass() * square(p.w()));
        }

        private static double roll(BicycleParameters.Wheel wheel) {
            return wheel.mass() * square(wheel.radius());
        }
    }

    /** Mass, distance from the steering axis, and moments of what steers, l being the steering axis. */
    private record Front(double m, double u, double ll, double lx, double lz) {
        static Front of(BicycleParameters p) {
            BicycleParameters.Body h = p.fork();
            BicycleParameters.Wheel f = p.front();
            double m = h.mass() + f.mass();
            double x = m == 0 ? p.w() : (h.x() * h.mass() + p.w() * f.mass()) / m;
            double z = m == 0 ? -f.radius() : (h.z() * h.mass() - f.radius() * f.mass()) / m;
            double ixx = h.ixx() + f.ixx() + h.mass() * square(h.z() - z) + f.mass() * square(f.radius() + z);
            double ixz = h.ixz() - h.mass() * (h.x() - x) * (h.z() - z) + f.mass() * (p.w() - x) * (f.radius() + z);
            double izz = h.izz() + f.ixx() + h.mass() * square(h.x() - x) + f.mass() * square(p.w() - x);
            double sin = Math.sin(p.lambdaRad());
            double cos = Math.cos(p.lambdaRad());
            double u = (x - p.w() - p.c()) * cos - z * sin;
            return new Front(
                    m,
                    u,
                    m * u * u + ixx * sin * sin + 2 * ixz * sin * cos + izz * cos * cos,
                    -m * u * z + ixx * sin + ixz * cos,
                    m * u * x + ixz * sin + izz * cos);
        }
    }

    private static double square(double value) {
        return value * value;
    }
}
