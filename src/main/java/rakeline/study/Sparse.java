package rakeline.study;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import rakeline.quantity.Numbers;

/**
 * Columns that are dear to read and run smoothly: read at few steps of a sweep, and between two of them filled by the
 * polynomial through those about. A stretch is filled only if the polynomial is proved on it: what is read in its
 * middle lies within {@value #NEAR} of what the others foretell there, and so does, at every step, the measure that
 * the columns belong to, of its own course. Otherwise its halves are looked at the same way, down to single steps, so
 * that a gap or a kink is met by what is read there.
 *
 * @param steps in order
 * @param read the columns at a step; NaN where one has no value
 * @param values of the measures at every step, as many columns belonging to each of them as to the next
 */
record Sparse(Numbers steps, IntFunction<double[]> read, List<Numbers> values) {
    /** As a share of the value; the polynomial that fills has a place more and is closer still. */
    static final double NEAR = 1e-5;

    /** As a share of a measure's uncertainty, how far its values may be from the polynomial. */
    private static final double COURSE = 1e-3;

    /** Less than this is no difference, in the measure's unit. */
    private static final double NOTHING = 1e-9;

    private static final int STRIDE = 16;

    /** Steps between two that were read, with the next outside of them where there are any. */
    private record Stretch(int from, int to, List<Integer> about) {
        Stretch {
            about = List.copyOf(about);
        }

        int middle() {
            return (from + to) / 2;
        }

        boolean isOpen() {
            return to - from > 1;
        }
    }

    /** Every column at every step, whatever the crew. */
    double[][] columns(Crew crew, Progress progress) {
        double[][] rows = new double[steps.size()][];
        List<Integer> read = new ArrayList<>();
        int stride = steps.size() > 2 * STRIDE ? STRIDE : 1;
        for (int step = 0; step < steps.size() - 1; step += stride) {
            read.add(step);
        }
        read.add(steps.size() - 1);
        readAll(crew, read, rows, progress);
        List<Stretch> open = between(read);
        while (!open.isEmpty()) {
            readAll(crew, open.stream().map(Stretch::middle).toList(), rows, progress);
            open = halvesOfRough(open, rows);
        }
        return turned(rows);
    }

    /** How many will be read is known at the end alone; as far as it is read, each row counts as one of all steps. */
    private void readAll(Crew crew, List<Integer> wanted, double[][] rows, Progress progress) {
        double before = Arrays.stream(rows).filter(Objects::nonNull).count();
        crew.each(
                wanted.size(),
                i -> rows[wanted.get(i)] = read.apply(wanted.get(i)),
                share -> progress.goesOn((before + share * wanted.size()) / rows.length));
    }

    private static List<Stretch> between(List<Integer> places) {
        List<Stretch> open = new ArrayList<>();
        for (int i = 0; i + 1 < places.size(); i++) {
            List<Integer> about = places.subList(Math.max(0, i - 1), Math.min(places.size(), i + 3));
            Stretch stretch = new Stretch(places.get(i), places.get(i + 1), about);
            if (stretch.isOpen()) {
                open.add(stretch);
            }
        }
        return open;
    }

    /** Fills what runs smoothly, and halves what does not. */
    private List<Stretch> halvesOfRough(List<Stretch> stretches, double[][] rows) {
        List<Stretch> rough = new ArrayList<>();
        for (Stretch stretch : stretches) {
            if (isSmooth(stretch, rows)) {
                fill(stretch, rows);
            } else {
                between(withMiddle(stretch)).stream()
                        .filter(half -> half.from() >= stretch.from() && half.to() <= stretch.to())
                        .forEach(rough::add);
            }
        }
        return rough;
    }

    private static List<Integer> withMiddle(Stretch stretch) {
        List<Integer> all = new ArrayList<>(stretch.about());
        all.add(all.indexOf(stretch.to()), stretch.middle());
        return all;
    }

    private boolean isSmooth(Stretch stretch, double[][] rows) {
        boolean isEnough = stretch.about().size() >= 3;
        return IntStream.range(0, values.size())
                .allMatch(track -> isGap(stretch, values.get(track)) || (isEnough && isSmooth(stretch, rows, track)));
    }

    /** Whether the measure has no value from one end to the other, so that what belongs to it has none either. */
    private static boolean isGap(Stretch stretch, Numbers course) {
        return IntStream.rangeClosed(stretch.from(), stretch.to()).allMatch(step -> Double.isNaN(course.at(step)));
    }

    private boolean isSmooth(Stretch stretch, double[][] rows, int track) {
        double[] middle = rows[stretch.middle()];
        int each = middle.length / values.size();
        for (int column = track * each; column < (track + 1) * each; column++) {
            double foretold = at(stretch.middle(), stretch.about(), column, rows);
            if (!(Math.abs(foretold - middle[column]) <= Math.max(NOTHING, NEAR * Math.abs(middle[column])))) {
                return false;
            }
        }
        return keepsCourse(stretch, values.get(track), Math.max(NOTHING, COURSE * middle[track * each]));
    }

    /** Whether a measure itself runs along the polynomial through the same steps, as near as that. */
    private boolean keepsCourse(Stretch stretch, Numbers course, double near) {
        List<Integer> all = withMiddle(stretch);
        return IntStream.range(stretch.from() + 1, stretch.to())
                .allMatch(step -> Math.abs(course(step, all, course) - course.at(step)) <= near);
    }

    private void fill(Stretch stretch, double[][] rows) {
        List<Integer> all = withMiddle(stretch);
        for (int step = stretch.from() + 1; step < stretch.to(); step++) {
            if (step != stretch.middle()) {
                double[] row = new double[rows[stretch.middle()].length];
                for (int column = 0; column < row.length; column++) {
                    row[column] = at(step, all, column, rows);
                }
                rows[step] = row;
            }
        }
    }

    private double at(int step, List<Integer> places, int column, double[][] rows) {
        return places.stream()
                .mapToDouble(place -> weight(step, place, places) * rows[place][column])
                .sum();
    }

    private double course(int step, List<Integer> places, Numbers course) {
        return places.stream()
                .mapToDouble(place -> weight(step, place, places) * course.at(place))
                .sum();
    }

    /** Lagrange's weight of a place for the value at a step. */
    private double weight(int step, int place, List<Integer> places) {
        double weight = 1;
        for (int other : places) {
            if (other != place) {
                weight *= (steps.at(step) - steps.at(other)) / (steps.at(place) - steps.at(other));
            }
        }
        return weight;
    }

    private static double[][] turned(double[][] rows) {
        double[][] columns = new double[rows[0].length][rows.length];
        for (int step = 0; step < rows.length; step++) {
            for (int column = 0; column < columns.length; column++) {
                columns[column][step] = rows[step][column];
            }
        }
        return columns;
    }
}
