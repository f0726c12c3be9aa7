package rakeline.rider;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import rakeline.quantity.Entries;
import rakeline.quantity.Input;

/** The tables of bodies against the published ones, number by number. */
class SegmentMassesTest {
    /** Dempster in Winter, table 4.1 (S): mass over body mass, centre from the proximal end over length. */
    @ParameterizedTest
    @CsvSource({
        "TRUNK, 0.578, 0.66",
        "UPPER_ARM, 0.028, 0.436",
        "FOREARM, 0.022, 0.682",
        "THIGH, 0.100, 0.433",
        "SHANK, 0.0465, 0.433",
        "FOOT, 0.0145, 0.50"
    })
    void cadaversOf1955(Segment segment, double mass, double centre) {
        assertRow(BodyTable.CADAVERS_1955, segment, mass, centre);
    }

    /** de Leva 1996, J. Biomech. 29:1223-1230, men (S); the trunk from its lower end, 1 − 0.4486. */
    @ParameterizedTest
    @CsvSource({
        "TRUNK, 0.4346, 0.5514",
        "UPPER_ARM, 0.0271, 0.5772",
        "FOREARM, 0.0162, 0.4574",
        "THIGH, 0.1416, 0.4095",
        "SHANK, 0.0433, 0.4395"
    })
    void menOf1996(Segment segment, double mass, double centre) {
        assertRow(BodyTable.MEN_1996, segment, mass, centre);
    }

    /** de Leva 1996, women (S); the trunk from its lower end, 1 − 0.4151. */
    @ParameterizedTest
    @CsvSource({
        "TRUNK, 0.4257, 0.5849",
        "UPPER_ARM, 0.0255, 0.5754",
        "FOREARM, 0.0138, 0.4559",
        "THIGH, 0.1478, 0.3612",
        "SHANK, 0.0481, 0.4352"
    })
    void womenOf1996(Segment segment, double mass, double centre) {
        assertRow(BodyTable.WOMEN_1996, segment, mass, centre);
    }

    /** de Leva 1996 (S): masses alone; the centres of these are given from other ends and taken from memory (M). */
    @ParameterizedTest
    @CsvSource({"HEAD, 0.0694, 0.0668", "HAND, 0.0061, 0.0056", "FOOT, 0.0137, 0.0129"})
    void headHandAndFootOf1996(Segment segment, double men, double women) {
        assertThat(row(BodyTable.MEN_1996, segment).mass()).isEqualTo(men);
        assertThat(row(BodyTable.WOMEN_1996, segment).mass()).isEqualTo(women);
    }

    /** Radii of gyration across, Winter, table 4.1, from memory (M): not verified. */
    @ParameterizedTest
    @CsvSource({"TRUNK, 0.503", "UPPER_ARM, 0.322", "FOREARM, 0.468", "THIGH, 0.323", "SHANK, 0.302", "FOOT, 0.475"})
    void radiiOfGyrationFromMemory(Segment segment, double across) {
        assertThat(row(BodyTable.CADAVERS_1955, segment).across()).isEqualTo(across);
    }

    /** Drillis and Contini 1966 in Winter (S2), the hand from memory (M): length over stature. */
    @Test
    void lengthsOverStature() {
        assertThat(List.of(
                        share(RiderInputs.SHANK),
                        share(RiderInputs.THIGH),
                        share(RiderInputs.TRUNK),
                        share(RiderInputs.UPPER_ARM),
                        share(RiderInputs.FOREARM),
                        share(RiderInputs.FOOT),
                        share(RiderInputs.HAND)))
                .usingComparatorForType((one, other) -> Math.abs(one - other) < 1e-12 ? 0 : 1, Double.class)
                .containsExactly(0.246, 0.245, 0.288, 0.186, 0.146, 0.152, 0.108);
    }

    /** ANSUR II 2012 (S): biacromial breadth over stature, 416/1756 of men and 365/1628 of women, their mean. */
    @Test
    void shouldersOverStature() {
        assertThat(share(RiderInputs.SHOULDER_WIDTH)).isCloseTo((416.0 / 1756 + 365.0 / 1628) / 2, within(5e-4));
    }

    @ParameterizedTest
    @EnumSource
    void aTableSaysWhatOfItIsFromMemory(BodyTable table) {
        assertThat(table.source()).contains("radii of gyration").contains("from memory, not verified");
    }

    @ParameterizedTest
    @EnumSource
    void aTableIsCalledByPopulationAndYear(BodyTable table) {
        assertThat(table.word()).matches("[a-z]+-\\d{4}");
        assertThat(BodyTable.of(table.word())).contains(table);
    }

    private static void assertRow(BodyTable table, Segment segment, double mass, double centre) {
        assertThat(row(table, segment).mass()).isEqualTo(mass);
        assertThat(row(table, segment).centre()).isCloseTo(centre, within(1e-12));
    }

    private static SegmentMass row(BodyTable table, Segment segment) {
        return SegmentMasses.of(table).stream()
                .filter(row -> row.segment() == segment)
                .findFirst()
                .orElseThrow();
    }

    private static double share(Input length) {
        Entries body = Entries.none()
                .with(RiderInputs.STATURE, 1000)
                .with(RiderInputs.INSEAM, 460)
                .with(RiderInputs.MASS, 70);
        return Rider.of("One", body, BodyTable.CADAVERS_1955, Map.of()).get(length) / 1000;
    }
}
