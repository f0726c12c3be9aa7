package rakeline.catalogue.chart;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import rakeline.geometry.Bike;
import rakeline.geometry.Inputs;
import rakeline.geometry.Setting;
import rakeline.quantity.Input;
import rakeline.quantity.Unit;

/**
 * What a field holds: a column of a chart with a row for each size, or the other way about.
 *
 * @param key of a number, its provenance or a group; empty where the role says all
 * @param unit as the heading or the line of units has it
 * @param byWord whether the heading is a word of the trade, not a key
 */
record Field(int index, Cell heading, Role role, String key, Optional<ChartUnit> unit, boolean byWord) {
    /** What is done with the cells of a field. */
    enum Role {
        NAME,
        SIZE,
        NUMBER,
        ORIGIN,
        UNCERTAINTY,
        STEP,
        GROUP,
        LEFT_OUT
    }

    private static final String PROVENANCE = "provenance.";
    private static final Map<String, Role> OF_PROVENANCE =
            Map.of("from", Role.ORIGIN, "u", Role.UNCERTAINTY, "step", Role.STEP);
    private static final Set<String> GROUPS =
            Inputs.all().stream().map(Input::group).collect(Collectors.toUnmodifiableSet());

    static Field of(int index, Cell heading) {
        String text = heading.text().strip();
        if (text.equals(ChartWords.NAME)) {
            return exact(index, heading, Role.NAME, "");
        }
        if (ChartWords.isKey(text)) {
            return exact(index, heading, Role.NUMBER, text);
        }
        if (GROUPS.contains(text)) {
            return exact(index, heading, Role.GROUP, text);
        }
        return provenance(index, heading, text).orElseGet(() -> word(index, heading));
    }

    private static Field exact(int index, Cell heading, Role role, String key) {
        return new Field(index, heading, role, key, Optional.empty(), false);
    }

    private static Optional<Field> provenance(int index, Cell heading, String text) {
        int dot = text.lastIndexOf('.');
        Role role = OF_PROVENANCE.get(text.substring(dot + 1));
        if (!text.startsWith(PROVENANCE) || role == null) {
            return Optional.empty();
        }
        String key = text.substring(PROVENANCE.length(), Math.max(PROVENANCE.length(), dot));
        return ChartWords.isKey(key) ? Optional.of(exact(index, heading, role, key)) : Optional.empty();
    }

    private static Field word(int index, Cell heading) {
        String means = ChartWords.meaning(heading.text()).orElse("");
        Role role = switch (means) {
            case "" -> Role.LEFT_OUT;
            case ChartWords.NAME -> Role.NAME;
            case ChartWords.SIZE -> Role.SIZE;
            default -> Role.NUMBER;
        };
        return new Field(index, heading, role, means, ChartWords.unit(heading.text()), true);
    }

    Field as(Role other, String otherKey) {
        return new Field(index, heading, other, otherKey, unit, byWord);
    }

    /** With the unit of a line of units, where the heading has none. */
    Field in(Optional<ChartUnit> ofLine) {
        return new Field(index, heading, role, key, unit.or(() -> ofLine), byWord);
    }

    boolean isNumber() {
        return role == Role.NUMBER;
    }

    boolean isAngle() {
        return setting().quantity().unit() == Unit.DEGREE;
    }

    /** A cell's own unit, else the heading's, else millimetres or degrees; empty where it does not fit the number. */
    Optional<ChartUnit> unit(DecimalMark.Figure figure) {
        ChartUnit usual = isAngle() ? ChartUnit.DEGREE : ChartUnit.MILLIMETRE;
        return ChartUnit.of(figure.unit())
                .or(() -> unit)
                .or(() -> Optional.of(usual))
                .filter(fitting -> fitting.isAngle() == isAngle());
    }

    /** Whether it is a number of the trade's words beside frame, fork and wheels, such as a crank's length. */
    boolean isSpare() {
        return isNumber() && byWord && !Bike.NEEDED_GROUPS.contains(group()) && !group().equals("charted");
    }

    /** The group of a number's key. */
    String group() {
        return setting().inputs().get(0).group();
    }

    Setting setting() {
        return Setting.of(key);
    }
}
