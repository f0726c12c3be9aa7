package rakeline.geometry.toe;

/**
 * The toe numbers by trying steering angle, crank angle and place on the ring together on a grid and closing in on the
 * best grid points. Its own formulation throughout: the wheel is turned by Rodrigues' formula, the shoe by its two end
 * centres, room is where a ray meets a capsule, a gap is point to segment. Radians and mm.
 */
final class BruteForce {
    /** The length to be made least. */
    enum Length {
        PEDAL,
        LEVEL,
        ROOM,
        GAP
    }

    /** A least length in mm and where it is, radians. */
    record Found(double value, double steer, double crank) {}

    private static final double NONE = Double.POSITIVE_INFINITY;
    private static final int STARTS = 6;

    private final FrontWheel wheel;
    private final Pedals pedals;
    private final Shoe shoe;
    private final Length length;
    private final double tube;
    private final int side;

    BruteForce(FrontWheel wheel, Pedals pedals, Shoe shoe, Length length) {
        this(wheel, pedals, shoe, length, 1);
    }

    /** The right foot, side 1, or the left foot, side −1, for which the bar turns the other way. */
    BruteForce(FrontWheel wheel, Pedals pedals, Shoe shoe, Length length, int side) {
        this.wheel = wheel;
        this.pedals = pedals;
        this.shoe = shoe;
        this.length = length;
        this.tube = wheel.tyreMm() / 2 + wheel.mudguardGapMm();
        this.side = side;
    }

    /** Least over a range of steering angles, all crank angles that the length knows, and the whole ring. */
    Found least(double fromSteer, double toSteer, int steers, int cranks, int turns) {
        double crank = length == Length.LEVEL ? 0 : length == Length.GAP ? Math.PI : Math.PI / 2;
        double[] low = {fromSteer, -crank, -Math.PI};
        double[] high = {toSteer, crank, Math.PI};
        int[] counts = {toSteer > fromSteer ? steers : 1, crank > 0 ? cranks : 1, turns};
        double[] best = least(low, high, counts);
        return new Found(best[0], best[1], best[2]);
    }

    /** Least over the ring at one steering and one crank angle. */
    double at(double steer, double crank) {
        double[] low = {steer, crank, -Math.PI};
        double[] high = {steer, crank, Math.PI};
        return least(low, high, new int[] {1, 1, 14_400})[0];
    }

    private double[] least(double[] low, double[] high, int[] counts) {
        double[] step = new double[3];
        for (int i = 0; i < 3; i++) {
            step[i] = counts[i] > 1 ? (high[i] - low[i]) / (counts[i] - 1) : 0;
        }
        double[] best = {NONE, low[0], low[1], low[2]};
        for (double[] start : starts(low, step, counts)) {
            double[] found = closeIn(start, step.clone(), low, high);
            best = found[0] < best[0] ? found : best;
        }
        return best;
    }

    /** The grid points no higher than their neighbours, lowest first. */
    private Iterable<double[]> starts(double[] low, double[] step, int[] n) {
        double[] grid = new double[n[0] * n[1] * n[2]];
        for (int i = 0; i < grid.length; i++) {
            grid[i] = value(point(i, low, step, n));
        }
        java.util.PriorityQueue<double[]> minima =
                new java.util.PriorityQueue<>(java.util.Comparator.comparingDouble((double[] p) -> p[0]));
        for (int i = 0; i < grid.length; i++) {
            if (grid[i] < NONE && lowest(grid, i, n)) {
                double[] at = point(i, low, step, n);
                minima.add(new double[] {grid[i], at[0], at[1], at[2]});
            }
        }
        return java.util.stream.Stream.generate(minima::poll)
                .limit(Math.min(STARTS, minima.size()))
                .toList();
    }

    private static double[] point(int index, double[] low, double[] step, int[] n) {
        int k = index % n[2];
        int j = index / n[2] % n[1];
        int i = index / n[2] / n[1];
        return new double[] {low[0] + i * step[0], low[1] + j * step[1], low[2] + k * step[2]};
    }

    private static boolean lowest(double[] grid, int index, int[] n) {
        int[] stride = {n[1] * n[2], n[2], 1};
        int[] at = {index / stride[0], index / n[2] % n[1], index % n[2]};
        for (int axis = 0; axis < 3; axis++) {
            boolean before = at[axis] > 0 && grid[index - stride[axis]] < grid[index];
            boolean after = at[axis] < n[axis] - 1 && grid[index + stride[axis]] < grid[index];
            if (before || after) {
                return false;
            }
        }
        return true;
    }

    private double[] closeIn(double[] start, double[] step, double[] low, double[] high) {
        double[] best = start;
        while (Math.max(step[0], Math.max(step[1], step[2])) > 2e-9) {
            double[] next = around(best, step, low, high);
            if (next == best) {
                step[0] *= 0.6;
                step[1] *= 0.6;
                step[2] *= 0.6;
            }
            best = next;
        }
        return best;
    }

    private double[] around(double[] best, double[] step, double[] low, double[] high) {
        double[] lowest = best;
        for (int i = step[0] > 0 ? -1 : 0; i <= (step[0] > 0 ? 1 : 0); i++) {
            for (int j = step[1] > 0 ? -1 : 0; j <= (step[1] > 0 ? 1 : 0); j++) {
                for (int k = -2; k <= 2; k++) {
                    double[] at = {
                        Math.max(low[0], Math.min(high[0], best[1] + i * step[0])),
                        Math.max(low[1], Math.min(high[1], best[2] + j * step[1])),
                        best[3] + k * step[2]
                    };
                    double value = value(at);
                    lowest = value < lowest[0] ? new double[] {value, at[0], at[1], at[2]} : lowest;
                }
            }
        }
        return lowest;
    }

    private double value(double[] at) {
        double[] p = ringPoint(at[0], at[2]);
        double px = pedals.crankMm() * Math.cos(at[1]);
        double py = pedals.crankMm() * Math.sin(at[1]);
        double pz = side * pedals.stanceWidthMm() / 2;
        if (length == Length.PEDAL || length == Length.LEVEL) {
            return p[0] - px - ball(0, p[1] - py, p[2] - pz, tube);
        }
        double[] inner = shoeEnd(-shoe.toeHalfWidthMm());
        double[] outer = shoeEnd(shoe.toeHalfWidthMm());
        double[] from = {p[0] - px - inner[0], p[1] - py - inner[1], p[2] - pz - inner[2]};
        double[] axis = {outer[0] - inner[0], outer[1] - inner[1], outer[2] - inner[2]};
        double radius = tube + shoe.toeRadiusMm();
        return length == Length.GAP ? segment(from, axis) - radius : ray(from, axis, radius);
    }

    /** Turned about the steering axis by Rodrigues' formula. */
    private double[] ringPoint(double steer, double turn) {
        double head = Math.toRadians(wheel.headAngleDeg());
        double ring = wheel.radiusMm() - wheel.tyreMm() / 2;
        double ux = -Math.cos(head);
        double uy = Math.sin(head);
        double ox = wheel.axleXMm() - wheel.offsetMm() * uy;
        double oy = wheel.axleYMm() + wheel.offsetMm() * ux;
        double vx = wheel.axleXMm() + ring * Math.cos(turn) - ox;
        double vy = wheel.axleYMm() + ring * Math.sin(turn) - oy;
        double along = (ux * vx + uy * vy) * (1 - Math.cos(steer));
        double c = Math.cos(steer);
        return new double[] {ox + vx * c + ux * along, oy + vy * c + uy * along, (ux * vy - uy * vx) * Math.sin(steer)};
    }

    /** An end centre of the capsule from the pedal's centre: turned outward, then toes down. */
    private double[] shoeEnd(double out) {
        double turn = Math.toRadians(shoe.toeOutDeg());
        double pitch = Math.toRadians(-shoe.pitchDeg());
        double reach = shoe.toeForwardMm() - shoe.toeRadiusMm();
        double x = reach * Math.cos(turn) - out * Math.sin(turn);
        double z = reach * Math.sin(turn) + out * Math.cos(turn);
        double y = shoe.toeHeightMm();
        return new double[] {
            x * Math.cos(pitch) - y * Math.sin(pitch), x * Math.sin(pitch) + y * Math.cos(pitch), side * z
        };
    }

    private static double segment(double[] from, double[] axis) {
        double t = Math.max(0, Math.min(1, dot(from, axis) / Math.max(1e-300, dot(axis, axis))));
        double x = from[0] - t * axis[0];
        double y = from[1] - t * axis[1];
        double z = from[2] - t * axis[2];
        return Math.sqrt(x * x + y * y + z * z);
    }

    /** How far a capsule can move along x until a point is first on it; the point is given from its first end. */
    private static double ray(double[] from, double[] axis, double radius) {
        double first = from[0] - ball(0, from[1], from[2], radius);
        double last = from[0] - ball(axis[0], from[1] - axis[1], from[2] - axis[2], radius);
        return Math.min(Math.min(first, last), cylinder(from, axis, radius));
    }

    /** The front of a ball on a line parallel to x; minus infinity where the line misses it. */
    private static double ball(double x, double dy, double dz, double radius) {
        double square = radius * radius - dy * dy - dz * dz;
        return square < 0 ? -NONE : x + Math.sqrt(square);
    }

    private static double cylinder(double[] from, double[] axis, double radius) {
        double l2 = dot(axis, axis);
        double m = dot(from, axis);
        double a = l2 - axis[0] * axis[0];
        double b = l2 * from[0] - m * axis[0];
        double c = l2 * (dot(from, from) - radius * radius) - m * m;
        double square = b * b - a * c;
        if (l2 == 0 || square < 0) {
            return NONE;
        }
        double way = (b - Math.sqrt(square)) / a;
        double t = (m - way * axis[0]) / l2;
        return t >= 0 && t <= 1 ? way : NONE;
    }

    private static double dot(double[] a, double[] b) {
        return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
    }
}
