package rakeline.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import rakeline.geometry.Bike;
import rakeline.geometry.Bikes;
import rakeline.geometry.Setting;
import rakeline.handling.Ride;

/**
 * Every solution once, no other: seeded targets whose solutions have a closed form, derived from the definitions of the side
 * view and the cockpit (D) and written down here anew.
 */
class SeekReferenceTest {
    private static final int EACH = 150;

    /** What a root may be off by, as a share of the range. */
    private static final double NEAR = 1e-9;

    /** The numbers of a drawing that the closed forms need; angles in radians. */
    private record Drawing(Bike bike) {
        double of(String key) {
            return Setting.of(key).valueIn(bike);
        }

        double alpha() {
            return Math.toRadians(of("frame.headAngleDeg"));
        }

        double radius() {
            return of("wheels.front.radiusMm");
        }

        double offset() {
            return of("fork.offsetMm");
        }

        /** The front axle's height above BB. */
        double axle() {
            return radius() - of("wheels.rear.radiusMm") + of("frame.bbDropMm");
        }

        double rear() {
            return Math.sqrt(square(of("frame.chainstayMm")) - square(of("frame.bbDropMm")));
        }

        /** Along the steering axis, from the head tube's top to where the stem leaves it. */
        double stack() {
            return of("cockpit.headsetCoverMm") + of("cockpit.spacersMm") + of("cockpit.stemClampHeightMm") / 2;
        }

        double stem() {
            return of("cockpit.stemLengthMm");
        }

        double stemAngle() {
            return Math.toRadians(of("cockpit.stemAngleDeg"));
        }

        /** The front axle ahead of BB: the axis' height and slope, and the offset square to it. */
        double front(double alpha, double offset) {
            return of("frame.reachMm") + (of("frame.stackMm") - axle()) / Math.tan(alpha) + offset / Math.sin(alpha);
        }

        double handAhead() {
            return stem() * Math.cos(stemAngle())
                    + of("cockpit.bar.hoodForwardMm") * Math.sin(alpha())
                    + of("cockpit.bar.hoodRiseMm") * Math.cos(alpha());
        }
    }

    /** A measure over an input: its value there, and every input at which it has a value. */
    private enum Closed {
        WHEELBASE_OVER_OFFSET("wheelbaseMm", "fork.offsetMm", 20, 60) {
            @Override
            double value(Drawing d, double offset) {
                return d.rear() + d.front(d.alpha(), offset);
            }

            @Override
            double[] roots(Drawing d, double target) {
                return new double[] {(target - d.rear() - d.front(d.alpha(), 0)) * Math.sin(d.alpha())};
            }
        },
        WHEELBASE_OVER_HEAD_ANGLE("wheelbaseMm", "frame.headAngleDeg", 60, 82) {
            @Override
            double value(Drawing d, double head) {
                return d.rear() + d.front(Math.toRadians(head), d.offset());
            }

            @Override
            double[] roots(Drawing d, double target) {
                // K sin α − A cos α = f
                double a = d.of("frame.stackMm") - d.axle();
                double k = target - d.rear() - d.of("frame.reachMm");
                double tilt = Math.asin(d.offset() / Math.hypot(a, k));
                return degrees(Math.atan2(a, k) + tilt, Math.atan2(a, k) + Math.PI - tilt);
            }
        },
        TRAIL_OVER_OFFSET("trailMm", "fork.offsetMm", -40, 90) {
            @Override
            double value(Drawing d, double offset) {
                return (d.radius() * Math.cos(d.alpha()) - offset) / Math.sin(d.alpha());
            }

            @Override
            double[] roots(Drawing d, double target) {
                return new double[] {d.radius() * Math.cos(d.alpha()) - target * Math.sin(d.alpha())};
            }
        },
        TRAIL_OVER_HEAD_ANGLE("trailMm", "frame.headAngleDeg", 55, 84) {
            @Override
            double value(Drawing d, double head) {
                double alpha = Math.toRadians(head);
                return (d.radius() * Math.cos(alpha) - d.offset()) / Math.sin(alpha);
            }

            @Override
            double[] roots(Drawing d, double target) {
                // R cos α − T sin α = f
                double open = Math.acos(d.offset() / Math.hypot(d.radius(), target));
                double turned = Math.atan2(target, d.radius());
                return degrees(open - turned, -open - turned);
            }
        },
        TRAIL_OVER_RADIUS("trailMm", "wheels.front.radiusMm", 250, 380) {
            @Override
            double value(Drawing d, double radius) {
                return (radius * Math.cos(d.alpha()) - d.offset()) / Math.sin(d.alpha());
            }

            @Override
            double[] roots(Drawing d, double target) {
                return new double[] {(target * Math.sin(d.alpha()) + d.offset()) / Math.cos(d.alpha())};
            }
        },
        FRONT_CENTRE_OVER_OFFSET("frontCentreMm", "fork.offsetMm", 10, 80) {
            @Override
            double value(Drawing d, double offset) {
                return Math.hypot(d.front(d.alpha(), offset), d.axle());
            }

            @Override
            double[] roots(Drawing d, double target) {
                double ahead = Math.sqrt(target * target - d.axle() * d.axle());
                return new double[] {(ahead - d.front(d.alpha(), 0)) * Math.sin(d.alpha())};
            }
        },
        FRONT_CENTRE_OVER_BB_DROP("frontCentreMm", "frame.bbDropMm", -150, 150) {
            @Override
            double value(Drawing d, double drop) {
                double rise = d.radius() - d.of("wheels.rear.radiusMm") + drop;
                double ahead = d.of("frame.reachMm")
                        + (d.of("frame.stackMm") - rise) / Math.tan(d.alpha())
                        + d.offset() / Math.sin(d.alpha());
                return Math.hypot(ahead, rise);
            }

            @Override
            double[] roots(Drawing d, double target) {
                // (p − y cot α)² + y² = F²
                double cot = 1 / Math.tan(d.alpha());
                double p = d.of("frame.reachMm") + d.of("frame.stackMm") * cot + d.offset() / Math.sin(d.alpha());
                double level = d.radius() - d.of("wheels.rear.radiusMm");
                return Stream.of(quadratic(1 + cot * cot, -2 * p * cot, p * p - target * target))
                        .flatMap(both -> Arrays.stream(both).boxed())
                        .mapToDouble(rise -> rise - level)
                        .toArray();
            }
        },
        FRONT_DROP_OVER_STEER("frontDropMm", "ride.steerDeg", 0, 90) {
            @Override
            double value(Drawing d, double steer) {
                double s = Math.cos(d.alpha());
                double delta = Math.toRadians(steer);
                double u = 2 * square(Math.sin(delta / 2));
                return d.radius() * (1 - Math.sqrt(1 - square(s * Math.sin(delta)))) - d.offset() * s * u;
            }

            @Override
            double[] roots(Drawing d, double target) {
                // with u = 1 − cos δ: R²(1 − 2 s² u + s² u²) = (R − D − f s u)²
                double s = Math.cos(d.alpha());
                double r = d.radius();
                double q = d.offset() * s;
                return Arrays.stream(quadratic(
                                r * r * s * s - q * q,
                                2 * ((r - target) * q - r * r * s * s),
                                target * (2 * r - target)))
                        .filter(u -> u >= 0 && u <= 1 && r - target - q * u > 0)
                        .map(u -> Math.toDegrees(2 * Math.asin(Math.sqrt(u / 2))))
                        .toArray();
            }
        },
        BB_HEIGHT_OVER_BB_DROP("bbHeightMm", "frame.bbDropMm", 0, 100) {
            @Override
            double value(Drawing d, double drop) {
                return d.of("wheels.rear.radiusMm") - drop;
            }

            @Override
            double[] roots(Drawing d, double target) {
                return new double[] {d.of("wheels.rear.radiusMm") - target};
            }
        },
        REAR_CENTRE_OVER_BB_DROP("rearCentreXMm", "frame.bbDropMm", -150, 150) {
            @Override
            double value(Drawing d, double drop) {
                return Math.sqrt(square(d.of("frame.chainstayMm")) - drop * drop);
            }

            @Override
            double[] roots(Drawing d, double target) {
                double drop = Math.sqrt(square(d.of("frame.chainstayMm")) - target * target);
                return new double[] {-drop, drop};
            }
        },
        BAR_X_OVER_STEM("barXMm", "cockpit.stemLengthMm", 0, 150) {
            @Override
            double value(Drawing d, double stem) {
                return d.of("frame.reachMm")
                        - d.stack() * Math.cos(d.alpha())
                        + stem * Math.sin(d.alpha() - d.stemAngle());
            }

            @Override
            double[] roots(Drawing d, double target) {
                return new double[] {
                    (target - d.of("frame.reachMm") + d.stack() * Math.cos(d.alpha()))
                            / Math.sin(d.alpha() - d.stemAngle())
                };
            }
        },
        BAR_X_OVER_STEM_ANGLE("barXMm", "cockpit.stemAngleDeg", -60, 60) {
            @Override
            double value(Drawing d, double angle) {
                return d.of("frame.reachMm")
                        - d.stack() * Math.cos(d.alpha())
                        + d.stem() * Math.sin(d.alpha() - Math.toRadians(angle));
            }

            @Override
            double[] roots(Drawing d, double target) {
                double sine = (target - d.of("frame.reachMm") + d.stack() * Math.cos(d.alpha())) / d.stem();
                return degrees(d.alpha() - Math.asin(sine), d.alpha() - Math.PI + Math.asin(sine));
            }
        },
        WHEEL_FLOP_OVER_HEAD_ANGLE("wheelFlopMm", "frame.headAngleDeg", 55, 84) {
            @Override
            double value(Drawing d, double head) {
                double cos = Math.cos(Math.toRadians(head));
                return (d.radius() * cos - d.offset()) * cos;
            }

            @Override
            double[] roots(Drawing d, double target) {
                return Arrays.stream(quadratic(d.radius(), -d.offset(), -target))
                        .map(Math::acos)
                        .map(Math::toDegrees)
                        .toArray();
            }
        },
        HAND_LEVER_OVER_BAR_WIDTH("handLeverMm", "cockpit.bar.widthMm", 300, 600) {
            @Override
            double value(Drawing d, double width) {
                return Math.hypot(d.handAhead(), width / 2);
            }

            @Override
            double[] roots(Drawing d, double target) {
                return new double[] {2 * Math.sqrt(target * target - square(d.handAhead()))};
            }
        };

        private final String measure;
        private final String input;
        private final double from;
        private final double to;

        Closed(String measure, String input, double from, double to) {
            this.measure = measure;
            this.input = input;
            this.from = from;
            this.to = to;
        }

        abstract double value(Drawing drawing, double at);

        abstract double[] roots(Drawing drawing, double target);

        Sought seek(Bike bike, double target) {
            Span span = new Span(new Varied(Setting.of(input), Mode.REDRAW), from, to);
            return new Seek(Ride.of(bike), span, Rides.target(measure, target), Optional.empty()).run();
        }

        /** Those in the range, upward; a root within a share of the range of an end is left to the caller. */
        List<Double> inside(Drawing drawing, double target) {
            return Arrays.stream(roots(drawing, target))
                    .filter(root -> root >= from && root <= to)
                    .sorted()
                    .boxed()
                    .toList();
        }

        /** Whether an answer hangs on the last bits of the reference itself: hard by an end or a turn. */
        boolean isDelicate(Drawing drawing, double target) {
            double[] roots = Arrays.stream(roots(drawing, target)).sorted().toArray();
            boolean atEnd = Arrays.stream(roots)
                    .anyMatch(root -> Math.min(Math.abs(root - from), Math.abs(root - to)) < 1e-7 * (to - from));
            return atEnd || (roots.length == 2 && roots[1] - roots[0] < 1e-5 * (to - from));
        }
    }

    @ParameterizedTest
    @EnumSource
    void everySolutionIsGivenOnceAndNoOther(Closed closed) {
        Random random = new Random(closed.name().hashCode());
        int checked = 0;
        while (checked < EACH) {
            Drawing drawing = new Drawing(drawn(random));
            double at = closed.from + random.nextDouble() * (closed.to - closed.from);
            double target = rounded(closed.value(drawing, at), random.nextInt(12));
            if (!closed.isDelicate(drawing, target)) {
                check(closed, drawing, target);
                checked++;
            }
        }
    }

    private static void check(Closed closed, Drawing drawing, double target) {
        List<Double> wanted = closed.inside(drawing, target);
        Sought sought = closed.seek(drawing.bike(), target);
        assertThat(sought.values().size())
                .as("%s at %s: %s", closed, target, wanted)
                .isEqualTo(wanted.size());
        assertThat(sought.stretches()).isEmpty();
        assertThat(sought.touching()).isEmpty();
        for (int i = 0; i < wanted.size(); i++) {
            assertThat(sought.values().at(i))
                    .as("%s at %s", closed, target)
                    .isCloseTo(wanted.get(i), within(NEAR * (closed.to - closed.from)));
            assertThat(Rides.value(sought.solutions().get(i).bike(), closed.measure))
                    .isCloseTo(target, within(1e-12 * Math.max(1, Math.abs(target))));
        }
    }

    @ParameterizedTest
    @EnumSource
    void theValueAtAnEndIsASolutionThere(Closed closed) {
        Drawing drawing = new Drawing(drawn(new Random(7)));
        for (double end : new double[] {closed.from, closed.to}) {
            Bike there = drawing.bike().redraw(Setting.changes(Map.of(closed.input, end)));
            List<Double> found = closed.seek(drawing.bike(), Rides.value(there, closed.measure)).values().stream()
                    .boxed()
                    .toList();
            assertThat(found.stream().filter(at -> Math.abs(at - end) < 1e-6 * (closed.to - closed.from)))
                    .as("%s at %s", closed, end)
                    .singleElement()
                    .satisfies(at -> assertThat(at).isCloseTo(end, within(NEAR * (closed.to - closed.from))));
        }
    }

    @ParameterizedTest
    @EnumSource
    void aSolutionHardByAnEndIsNotTheEnd(Closed closed) {
        Drawing drawing = new Drawing(drawn(new Random(11)));
        double off = 1e-5 * (closed.to - closed.from);
        double inside = closed.from + off;
        assertThat(closed.seek(drawing.bike(), closed.value(drawing, inside)).values().stream())
                .as("%s", closed)
                .anySatisfy(at -> assertThat(at).isCloseTo(inside, within(0.1 * off)))
                .noneSatisfy(at -> assertThat(at).isCloseTo(closed.from, within(0.1 * off)));
    }

    @Test
    void theGreatestDropOfTheFrontIsTouchedOnce() {
        // D: R s cos δ = f √(1 − s² sin² δ), so cos² δ = f² (1 − s²)/(s² (R² − f²))
        Random random = new Random(3);
        for (int i = 0; i < 50; i++) {
            Drawing drawing = new Drawing(drawn(random));
            double s = Math.cos(drawing.alpha());
            double cosine = drawing.offset()
                    * Math.sqrt(1 - s * s)
                    / (s * Math.sqrt(square(drawing.radius()) - square(drawing.offset())));
            double steer = Math.toDegrees(Math.acos(cosine));
            double most = Closed.FRONT_DROP_OVER_STEER.value(drawing, steer);
            Sought sought = Closed.FRONT_DROP_OVER_STEER.seek(drawing.bike(), most);
            assertThat(sought.touching()).as("%s", most).hasSize(1).containsExactlyElementsOf(boxed(sought));
            assertThat(sought.values().at(0)).isCloseTo(steer, within(NEAR * 90));
            assertThat(sought.sentence()).contains("turns and only touches the target");
            assertThat(boxed(Closed.FRONT_DROP_OVER_STEER.seek(drawing.bike(), most - 1e-11)))
                    .hasSize(2);
            assertThat(boxed(Closed.FRONT_DROP_OVER_STEER.seek(drawing.bike(), most + 1e-11)))
                    .isEmpty();
        }
    }

    private static List<Double> boxed(Sought sought) {
        return sought.values().stream().boxed().toList();
    }

    private static Bike drawn(Random random) {
        Map<String, Double> numbers = new HashMap<>();
        numbers.put("frame.headAngleDeg", between(random, 66, 76));
        numbers.put("fork.offsetMm", between(random, 25, 65));
        numbers.put("frame.stackMm", between(random, 480, 640));
        numbers.put("frame.reachMm", between(random, 340, 420));
        numbers.put("frame.bbDropMm", between(random, 40, 90));
        numbers.put("wheels.front.radiusMm", between(random, 300, 360));
        numbers.put("wheels.rear.radiusMm", between(random, 300, 360));
        numbers.put("cockpit.stemLengthMm", between(random, 50, 130));
        numbers.put("cockpit.stemAngleDeg", between(random, -17, 17));
        numbers.put("ride.steerDeg", 0.0);
        return Bikes.redrawn(Bikes.whole(), numbers);
    }

    private static double between(Random random, double from, double to) {
        return rounded(from + random.nextDouble() * (to - from), random.nextInt(4));
    }

    private static double rounded(double value, int decimals) {
        return new BigDecimal(value).setScale(decimals, RoundingMode.HALF_UP).doubleValue();
    }

    private static double square(double x) {
        return x * x;
    }

    private static double[] degrees(double... radians) {
        return Arrays.stream(radians).map(Math::toDegrees).toArray();
    }

    /** The real solutions of a x² + b x + c = 0, without cancellation. */
    private static double[] quadratic(double a, double b, double c) {
        double root = Math.sqrt(b * b - 4 * a * c);
        double q = -(b + Math.copySign(root, b)) / 2;
        return Double.isNaN(root) ? new double[0] : new double[] {q / a, c / q};
    }
}
