package rakeline.engine;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rakeline.figure.Chart;
import rakeline.figure.Column;
import rakeline.figure.Figure;
import rakeline.figure.Table;
import rakeline.quantity.Numbers;
import rakeline.quantity.Quantity;
import rakeline.quantity.Unit;

class ProseTest {
    private static final Quantity OFFSET = Quantity.of("fork.offsetMm", "Fork offset", Unit.MILLIMETRE, "axis to axle")
            .declared();
    private static final Quantity TRAIL =
            Quantity.of("trailMm", "Trail", Unit.MILLIMETRE, "along the ground").declared();
    private static final Chart CURVE = new Chart(
            "Trail",
            OFFSET,
            Numbers.of(40, 45, 50),
            47,
            List.of(new Chart.Panel(TRAIL, Numbers.of(66.25, 60.75, 55.5), 58.59)),
            List.of(),
            "",
            List.of());
    private static final Table TABLE = new Table(
            "",
            List.of(
                    Column.ofWords("measure", "Measure", List.of("Trail", "Wheelbase")),
                    Column.of(TRAIL.named("bikeMm", "Bike"), Numbers.of(61.2, 985.04))),
            "",
            List.of());

    private final Prose prose = Prose.of(List.of(
            row("r1", "each", new Result.Value("5", 5, List.of()), Map.of("trail", 58.666, "each", 5.0)),
            row("r2", "curve", new Result.Shown(CURVE), Map.of()),
            row("r3", "table", new Result.Shown(TABLE), Map.of()),
            row("r4", "words", new Result.Text("*a* <b>"), Map.of()),
            new Outcome("r5", "broken", State.FAILED, "no", "", Optional.empty(), List.of(), List.of())));

    private static Outcome row(String id, String name, Result result, Map<String, Double> numbers) {
        return new Outcome(
                id, name, State.FRESH, "", "", Optional.of(result), List.of(), List.of(), List.of(), numbers);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "{{each.trail|1}}; 58.7",
                "{{r1.trail|0}}; 59",
                "{{trail|2}}; 58.67",
                "{{each}}; 5",
                "{{curve.trailMm|2}}; 58.59",
                "{{curve.trailMm}}; 58.6",
                "{{curve.fork.offsetMm|0}}; 47",
                "{{curve.trailMm[first]|1}}; 66.3",
                "{{curve.trailMm[last]|1}}; 55.5",
                "{{curve.trailMm[45]|2}}; 60.75",
                "{{curve.fork.offsetMm[least]|0}}; 40",
                "{{curve.trailMm[most]|2}}; 66.25",
                "{{curve.trailMm[#2]|2}}; 60.75",
                "{{table.bikeMm[Wheelbase]|1}}; 985.0",
            })
    void aPlaceIsFilledWithWhatItNames(String place, String filled) {
        assertThat(prose.fill("a " + place + " b").text()).isEqualTo("a " + filled + " b");
    }

    @Test
    void wordsOfARowStayWords() {
        assertThat(prose.fill("{{words}}").text()).isEqualTo("\\*a\\* \\<b\\>");
    }

    @Test
    void aCodeSpanStaysAsItIs() {
        assertThat(prose.fill("`{{each|1}}`")).isEqualTo(new Prose.Filled("`{{each|1}}`", List.of()));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "{{eech}}; names no row of the page; did you mean each?",
                "{{broken|1}}; needs row broken, which is failed.",
                "{{curve}}; names a figure",
                "{{curve.trialMm}}; did you mean trailMm?",
                "{{table.bikeMm}}; asks for one of 2 lines",
                "{{curve.trailMm[#9]}}; asks for line 9 of 3.",
                "{{curve.trailMm[46]}}; asks for the line 46, which is not there.",
            })
    void whatCannotBeFilledBecomesADashAndIsTold(String place, String told) {
        Prose.Filled filled = prose.fill(place);
        assertThat(filled.text()).isEqualTo("–");
        assertThat(filled.missing())
                .singleElement()
                .asString()
                .startsWith(place)
                .contains(told);
    }

    @Test
    void figuresOfOneLineNeedNoWordForIt() {
        Figure one = new Table("", List.of(Column.of(TRAIL, Numbers.of(61.26))), "", List.of());
        Prose single = Prose.of(List.of(row("r1", "one", new Result.Shown(one), Map.of())));
        assertThat(single.fill("{{one.trailMm}}").text()).isEqualTo("61.3");
    }
}
