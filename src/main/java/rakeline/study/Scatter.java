package rakeline.study;

import java.util.Arrays;
import java.util.List;
import rakeline.quantity.Caution;
import rakeline.quantity.Numbers;
import rakeline.quantity.Quantity;

/**
 * What a spread found.
 *
 * @param rows one for each measure, in the order asked
 */
public record Scatter(Spread spread, List<Row> rows) {
    /**
     * One measure.
     *
     * @param value on the bike as it is; NaN where it has none
     * @param standardUncertainty the standard deviation of the draws; NaN where some draws have no value
     * @param nullShare the share of draws without a value, 0 to 1
     * @param linear the root of the sum of the squared parts; NaN where it is withheld
     * @param parts what each doubt alone contributes, signed: slope times standard uncertainty; NaN where it has none
     */
    public record Row(
            Quantity quantity,
            double value,
            double standardUncertainty,
            double nullShare,
            double linear,
            Numbers parts) {
        /** The linear figure is withheld where it is further than this share from that of the draws. */
        private static final double APART = 0.1;

        /** Less than this is no difference, in the measure's unit. */
        private static final double NOTHING = 1e-6;

        static Row of(Quantity quantity, double value, double nullShare, Numbers parts, double... known) {
            double drawn = nullShare > 0 || Double.isNaN(value) ? Double.NaN : deviation(known);
            double linear = FirstOrder.root(parts);
            boolean agrees = Math.abs(linear - drawn) <= Math.max(NOTHING, APART * Math.max(linear, drawn));
            return new Row(quantity, value, drawn, nullShare, agrees ? linear : Double.NaN, parts);
        }

        /** Whether there is a deviation but no linear figure to stand for it. */
        public boolean isWithheld() {
            return !Double.isNaN(standardUncertainty) && Double.isNaN(linear);
        }

        private static double deviation(double... known) {
            double mean = Arrays.stream(known).average().orElse(Double.NaN);
            double squares =
                    Arrays.stream(known).map(x -> (x - mean) * (x - mean)).sum();
            return Math.sqrt(squares / known.length);
        }
    }

    public Scatter {
        rows = List.copyOf(rows);
    }

    /** As in {@code Road XS: spread of 10000 draws}. */
    public String title() {
        return spread.start().bike().name() + ": standard uncertainties carried through, " + spread.draws() + " draws";
    }

    /** What was varied and by how much, in words. */
    public String held() {
        List<String> each = spread.doubts().stream().map(Doubt::words).toList();
        return each.isEmpty()
                ? "every input; no uncertainty is known."
                : "every other input; these vary: " + String.join(", ", each) + ".";
    }

    /** The cautions that belong to the measures, each once. */
    public List<Caution> cautions() {
        return Quantity.cautionsOf(rows.stream().map(Row::quantity).toList());
    }
}
