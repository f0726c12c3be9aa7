package rakeline.quantity;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * One declaration of an input or a measure; everything that names, prints, draws, completes or refuses it reads this.
 *
 * @param key as in files and commands, unit at its end: {@code frame.headAngleDeg}, {@code trailMm}
 * @param label as on an axis or in a table, without unit
 * @param symbol as in formulas, or empty
 * @param accepted the accepted range of an input; {@link Range#ANY} for a measure
 * @param decimals shown; they follow the uncertainty
 * @param uncertaintyOrNaN default standard uncertainty, in the unit; NaN where none is known
 * @param definition one sentence
 * @param cautions what stands next to the number where it can mislead or hurt someone
 * @param limits lines drawn beside it, each with its source
 * @param sources what definition, default, limits, formula and uncertainty rest on
 */
public record Quantity(
        String key,
        String label,
        String symbol,
        Unit unit,
        Range accepted,
        int decimals,
        double uncertaintyOrNaN,
        String definition,
        List<Caution> cautions,
        List<Limit> limits,
        List<SourceNote> sources) {

    private static final int MOST_DECIMALS = 9;

    public Quantity {
        cautions = List.copyOf(cautions);
        limits = List.copyOf(limits);
        sources = List.copyOf(sources);
        if (!key.endsWith(unit.keySuffix()) && !key.contains("Per")) {
            throw new Refusal(key + " does not end in its unit, " + unit.keySuffix());
        }
    }

    /** Starts a declaration. */
    public static Draft of(String key, String label, Unit unit, String definition) {
        Draft.Head head = new Draft.Head(key, label, unit, definition);
        return new Draft(head, "", Range.ANY, unit.decimals(), Double.NaN, List.of(), List.of(), List.of());
    }

    /** The same quantity under another key and label. */
    public Quantity named(String newKey, String newLabel) {
        return new Quantity(
                newKey,
                newLabel,
                symbol,
                unit,
                accepted,
                decimals,
                uncertaintyOrNaN,
                definition,
                cautions,
                limits,
                sources);
    }

    /** The cautions that belong to quantities, each once. */
    public static List<Caution> cautionsOf(List<Quantity> quantities) {
        return quantities.stream()
                .flatMap(quantity -> quantity.cautions().stream())
                .distinct()
                .toList();
    }

    /** The number alone, with this quantity's decimals; a dash for NaN. */
    public String format(double value) {
        return Decimals.fixed(value, decimals);
    }

    /** The number with its unit. */
    public String formatWithUnit(double value) {
        return unit.attach(format(value));
    }

    /** A value with its standard uncertainty, which has at least one digit that is not 0: {@code 4.668 ± 0.004 mm}. */
    public String formatWithUncertainty(double value, double uncertainty) {
        int shown = decimalsFor(uncertainty);
        return unit.attach(Decimals.fixed(value, shown) + " ± " + Decimals.fixed(uncertainty, shown));
    }

    /** An uncertainty, or a difference, alone: with more decimals where it would else be shown as 0. */
    public String formatSmall(double value) {
        return Decimals.fixed(value, decimalsFor(value));
    }

    private int decimalsFor(double small) {
        double size = Math.abs(small);
        boolean seen = !(size > 0) || !Double.isFinite(size) || size >= 0.5 * Math.pow(10, -decimals);
        return seen ? decimals : Math.min(MOST_DECIMALS, (int) Math.ceil(-Math.log10(size)));
    }

    /** As someone would say it: with the digits that were given, at most two decimals more than usual, and the unit. */
    public String said(double value) {
        return unit.attach(Decimals.shown(value, decimals + 2));
    }

    /** The label inside a sentence: {@code head angle}. */
    public String inSentence() {
        return Sentences.lower(label);
    }

    /** The same with the key for those who type it: {@code head angle (frame.headAngleDeg)}. */
    public String withKey() {
        return inSentence() + " (" + key + ")";
    }

    /** The accepted range as people read it: {@code 50..85°}. */
    public String acceptedWords() {
        return unit.attach(Decimals.signed(accepted.toString()));
    }

    /** Label and unit, as a table heading: {@code Trail, mm}. */
    public String heading() {
        return label + ", " + unit.symbol();
    }

    /** What a part rests on, in words; empty where nothing is said. */
    public String sourceOf(SourceNote.Part part) {
        return sources.stream()
                .filter(note -> note.part() == part)
                .map(SourceNote::source)
                .collect(Collectors.joining());
    }

    /** What is known of it besides its definition, a line each: range, uncertainty, limits, source. */
    public List<String> facts() {
        List<String> facts = new ArrayList<>();
        if (!accepted.equals(Range.ANY)) {
            facts.add("Accepted: " + acceptedWords());
        }
        if (!Double.isNaN(uncertaintyOrNaN)) {
            facts.add("Usual standard uncertainty: " + unit.attach(Decimals.shortest(uncertaintyOrNaN)));
        }
        limits.forEach(limit -> facts.add((limit.bounds() ? "Limit: " : "Compare: ")
                + unit.attach(Decimals.shown(limit.value())) + ", " + limit.label() + " (" + limit.source() + ")"));
        Stream.of(sources)
                .filter(notes -> !notes.isEmpty())
                .map(notes -> notes.stream().map(SourceNote::words).collect(Collectors.joining("; ", "Sources: ", ".")))
                .forEach(facts::add);
        return facts;
    }

    /**
     * Returns the value, or refuses one that is not accepted.
     *
     * @throws Refusal naming key, value and accepted range
     */
    public double check(double value) {
        if (!accepted.contains(value)) {
            throw new Refusal(
                    Sentences.upper(withKey()) + " is " + refused(value) + "; accepted is " + acceptedWords() + ".");
        }
        return value;
    }

    /** With its usual digits, unless these would make it look as if it were accepted. */
    private String refused(double value) {
        if (!Double.isFinite(value)) {
            return Decimals.shown(value);
        }
        double rounded = Double.parseDouble(Decimals.shortest(value, decimals + 2));
        return accepted.contains(rounded) ? unit.attach(Decimals.shown(value)) : said(value);
    }

    /** A declaration being written down; what is not said keeps its usual value. Each word returns a new one. */
    public record Draft(
            Head head,
            String symbol,
            Range accepted,
            int decimals,
            double uncertainty,
            List<Caution> cautions,
            List<Limit> limits,
            List<SourceNote> sources) {

        record Head(String key, String label, Unit unit, String definition) {}

        public Draft {
            cautions = List.copyOf(cautions);
            limits = List.copyOf(limits);
            sources = List.copyOf(sources);
        }

        public Draft symbol(String value) {
            return new Draft(head, value, accepted, decimals, uncertainty, cautions, limits, sources);
        }

        public Draft within(double from, double to) {
            return new Draft(head, symbol, new Range(from, to), decimals, uncertainty, cautions, limits, sources);
        }

        public Draft decimals(int value) {
            return new Draft(head, symbol, accepted, value, uncertainty, cautions, limits, sources);
        }

        /** The default standard uncertainty, in the unit. */
        public Draft uncertainty(double value) {
            return new Draft(head, symbol, accepted, decimals, value, cautions, limits, sources);
        }

        /** One caution more. */
        public Draft caution(Caution value) {
            List<Caution> more = new ArrayList<>(cautions);
            more.add(value);
            return cautions(more);
        }

        /** These cautions alone. */
        public Draft cautions(List<Caution> all) {
            return new Draft(head, symbol, accepted, decimals, uncertainty, all, limits, sources);
        }

        /** A floor. */
        public Draft limit(double value, String limitLabel, String limitSource) {
            return limit(new Limit(value, limitLabel, limitSource));
        }

        /** A ceiling. */
        public Draft atMost(double value, String limitLabel, String limitSource) {
            return limit(new Limit(value, limitLabel, limitSource, Limit.Side.AT_MOST));
        }

        /** A figure to read the number against, which bounds nothing. */
        public Draft about(double value, String limitLabel, String limitSource) {
            return limit(new Limit(value, limitLabel, limitSource, Limit.Side.ABOUT));
        }

        /** A range from rules of a sport or from a recommendation, which no part and no rider sets. */
        public Draft rule(double from, double to, String limitLabel, String limitSource) {
            return limit(new Limit(from, limitLabel + " from", limitSource).asRule())
                    .limit(new Limit(to, limitLabel + " to", limitSource, Limit.Side.AT_MOST).asRule());
        }

        private Draft limit(Limit limit) {
            List<Limit> more = new ArrayList<>(limits);
            more.add(limit);
            return new Draft(head, symbol, accepted, decimals, uncertainty, cautions, more, sources);
        }

        /** What a part rests on; a later note on the same part takes the place of an earlier one. */
        public Draft source(SourceNote.Part part, SourceStanding standing, String text) {
            List<SourceNote> more = new ArrayList<>(sources);
            more.removeIf(note -> note.part() == part);
            more.add(new SourceNote(part, standing, text));
            return new Draft(head, symbol, accepted, decimals, uncertainty, cautions, limits, more);
        }

        public Quantity declared() {
            return new Quantity(
                    head.key(),
                    head.label(),
                    symbol,
                    head.unit(),
                    accepted,
                    decimals,
                    uncertainty,
                    head.definition(),
                    cautions,
                    limits,
                    sources);
        }
    }
}
