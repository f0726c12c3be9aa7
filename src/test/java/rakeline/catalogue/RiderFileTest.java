package rakeline.catalogue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rakeline.geometry.Inputs;
import rakeline.quantity.Refusal;
import rakeline.rider.BodyTable;
import rakeline.rider.Rider;
import rakeline.rider.RiderInputs;

class RiderFileTest {
    private static final String BODY = "\"statureMm\": 1780, \"inseamMm\": 845, \"massKg\": 78";

    private static Rider read(String members) {
        String text = "{\"format\": \"rakeline/rider\", \"version\": 1, \"name\": \"One\", " + members + "}";
        return RiderFile.read(text.getBytes(StandardCharsets.UTF_8), "one.rider.json");
    }

    private static void refused(String members, String... words) {
        assertThatThrownBy(() -> read(members))
                .isInstanceOf(Refusal.class)
                .hasMessageStartingWith("one.rider.json: ")
                .hasMessageContainingAll(words);
    }

    @Test
    void threeNumbersAreEnough() {
        assertThat(read(BODY).get(RiderInputs.THIGH)).isEqualTo(0.245 * 1780);
    }

    @Test
    void aMissingNumberIsNamed() {
        refused("\"statureMm\": 1780, \"massKg\": 78", "missing: inseam (inseamMm, 300..1300 mm)");
    }

    @Test
    void anUnknownKeyNamesTheNearest() {
        refused(BODY + ", \"footMmm\": 260", "footMmm", "did you mean footMm?");
    }

    @Test
    void aUnitInANumberIsRefused() {
        refused("\"statureMm\": \"1780 mm\"", "statureMm", "\"1780 mm\"", "a number with a decimal point");
    }

    @Test
    void aDecimalCommaIsRefused() {
        refused("\"massKg\": \"71,3\"", "massKg", "\"71,3\"", "decimal point");
    }

    @Test
    void notANumberIsRefused() {
        refused("\"massKg\": NaN", "one.rider.json");
    }

    @Test
    void aNumberOutOfItsRangeIsRefused() {
        refused(BODY + ", \"elbowDeg\": 181", "elbowDeg", "181", "0..180");
    }

    @Test
    void contactPointsAreAllOrNothing() {
        refused(BODY + ", \"contact\": {\"sitXMm\": -200}", "contact.", "hand point wanted, y");
    }

    @Test
    void aShoeIsTakenWholeWithItsDefaults() {
        assertThat(read(BODY + ", \"shoe\": {\"toeForwardMm\": 95}").own())
                .containsEntry(Inputs.TOE_FORWARD, 95.0)
                .containsEntry(Inputs.SHOE_PITCH, 0.0);
    }

    @Test
    void aTableIsChosenByName() {
        assertThat(read(BODY + ", \"segments\": {\"table\": \"men-1996\"}").table())
                .isEqualTo(BodyTable.MEN_1996);
    }

    /** What files of version 0.1.0 say. */
    @ParameterizedTest
    @CsvSource({"dempster, CADAVERS_1955", "de-leva-men, MEN_1996", "de-leva-women, WOMEN_1996"})
    void aTablesFormerNameIsStillRead(String former, BodyTable table) {
        assertThat(read(BODY + ", \"segments\": {\"table\": \"" + former + "\"}")
                        .table())
                .isEqualTo(table);
    }

    @Test
    void anUnknownTableIsRefusedWithTheKnownOnes() {
        refused(BODY + ", \"segments\": {\"table\": \"mine\"}", "mine", "cadavers-1955, men-1996, women-1996");
    }

    @Test
    void whatIsAssumedIsListed() {
        assertThat(read(BODY + ", \"footMm\": 260").assumed())
                .containsEntry(RiderInputs.HIP_UP, 85.0)
                .doesNotContainKey(RiderInputs.FOOT);
    }
}
