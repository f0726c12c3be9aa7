package rakeline.catalogue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import rakeline.geometry.Bike;
import rakeline.geometry.Inputs;
import rakeline.geometry.Provenance;
import rakeline.quantity.Decimals;
import rakeline.quantity.Input;

/** What a bike file may hold, and what is refused, with file, key, value and what is accepted. */
class BikeFileTest {
    static Stream<Input> inputs() {
        return Inputs.all().stream();
    }

    static Stream<Input> required() {
        return inputs().filter(input -> input.presence() instanceof Input.Presence.Required);
    }

    static Stream<Input> notRequired() {
        return inputs().filter(input -> !(input.presence() instanceof Input.Presence.Required))
                .filter(input -> !input.name().startsWith("hood")); // without levers the bar needs them
    }

    @Test
    void aFileWithEveryKeyIsRead() {
        Bike bike = BikeText.whole().read();
        inputs().filter(input -> !input.group().endsWith(".lever"))
                .forEach(input -> assertThat(bike.get(input)).as(input.key()).isEqualTo(BikeText.sample(input)));
    }

    @Test
    void leversTakeThePlaceOfTheHoodPoint() {
        Bike bike = BikeText.whole().with("cockpit.bar.lever.aheadMm", 40).read();
        assertThat(bike.get(Inputs.HOOD_FORWARD)).isEqualTo(bike.get(Inputs.BAR_REACH) + 40);
        assertThat(bike.given().has(Inputs.HOOD_FORWARD)).isFalse();
    }

    @Test
    void frameForkAndWheelsAreEnough() {
        assertThat(BikeText.plain().read().groups())
                .contains("frame", "fork", "wheels.front", "wheels.rear")
                .doesNotContain("crank", "cockpit", "contact");
    }

    @ParameterizedTest
    @MethodSource("required")
    void aMissingRequiredKeyIsRefused(Input input) {
        BikeText.whole()
                .with(input.key(), BikeText.sample(input))
                .without(input.key())
                .isRefusedFor(input.key(), "missing", range(input));
    }

    @ParameterizedTest
    @MethodSource("notRequired")
    void aKeyThatMayBeLeftOutMayBe(Input input) {
        Bike bike = BikeText.whole().without(input.key()).read();
        assertThat(bike.given().has(input)).isFalse();
    }

    @ParameterizedTest
    @MethodSource("inputs")
    void aNumberBelowItsRangeIsRefused(Input input) {
        double below = input.quantity().accepted().from() - 0.5;
        BikeText.whole()
                .with(input.key(), below)
                .isRefusedFor(input.key(), "line", Decimals.shortest(below), range(input));
    }

    @ParameterizedTest
    @MethodSource("inputs")
    void aNumberAboveItsRangeIsRefused(Input input) {
        double above = input.quantity().accepted().to() + 0.5;
        BikeText.whole()
                .with(input.key(), above)
                .isRefusedFor(input.key(), "line", Decimals.shortest(above), range(input));
    }

    @ParameterizedTest
    @MethodSource("inputs")
    void notANumberIsRefused(Input input) {
        BikeText.whole().withRaw(input.key(), "NaN").isRefusedFor(input.key(), "NaN", range(input));
    }

    @ParameterizedTest
    @MethodSource("inputs")
    void aNumberInQuotesIsRefused(Input input) {
        BikeText.whole().withRaw(input.key(), "\"71\"").isRefusedFor(input.key(), "71", range(input));
    }

    @ParameterizedTest
    @ValueSource(strings = {"true", "null", "[515]", "{}", "\"515 mm\"", "\"71,3\"", "\"\""})
    void anotherTypeThanANumberIsRefused(String raw) {
        BikeText.whole().withRaw("frame.stackMm", raw).isRefusedFor("frame.stackMm", "200..800");
    }

    @Test
    void aUnitInANumberIsRefusedWithTheText() {
        BikeText.whole().withRaw("frame.stackMm", "\"515 mm\"").isRefusedFor("frame.stackMm", "515 mm");
    }

    @ParameterizedTest
    @ValueSource(strings = {"Infinity", "-Infinity", "1e400"})
    void infinityIsRefused(String raw) {
        BikeText.whole().withRaw("frame.stackMm", raw).isRefusedFor("frame.stackMm", raw, "200..800");
    }

    @Test
    void aDecimalCommaIsRefusedAndTheDecimalPointShown() {
        BikeText.whole().withRaw("frame.headAngleDeg", "71,3").isRefusedFor("71,3", "point", "71.3");
    }

    @ParameterizedTest
    @ValueSource(strings = {"515 mm", "5.1.5", "0515", "--515", "abc"})
    void whatIsNoJsonIsRefusedWithItsLine(String raw) {
        BikeText.whole().withRaw("frame.stackMm", raw).isRefusedFor("line");
    }

    @Test
    void anUnknownKeyIsRefusedWithTheNearest() {
        BikeText.whole().withRaw("frame.headAngelDeg", "71").isRefusedFor("frame.headAngelDeg", "frame.headAngleDeg");
    }

    @Test
    void anUnknownKeyIsRefusedWithItsValue() {
        BikeText.whole().withRaw("frame.colour", "\"red\"").isRefusedFor("frame.colour", "red");
    }

    @Test
    void anUnknownGroupIsRefusedWithTheNearest() {
        BikeText.whole().withRaw("cranks", "{}").isRefusedFor("cranks", "crank");
    }

    @Test
    void bothWheelsIsNoKeyOfAFile() {
        BikeText.whole().withRaw("wheels.both", "{\"tyreMm\": 28}").isRefusedFor("wheels.both");
    }

    @Test
    void aDoubledKeyIsRefused() {
        String twice = BikeText.plain().text().replace("\"stackMm\"", "\"stackMm\": 515, \"stackMm\"");
        BikeText.assertRefused(twice, "stackMm");
    }

    @Test
    void aDoubledGroupIsRefused() {
        String twice = BikeText.plain().text().replace("\"fork\"", "\"fork\": {\"offsetMm\": 47}, \"fork\"");
        BikeText.assertRefused(twice, "fork");
    }

    @ParameterizedTest
    @ValueSource(strings = {"frame", "fork", "wheels", "wheels.front", "wheels.rear"})
    void aMissingGroupThatIsNeededIsRefused(String group) {
        BikeText.whole().without(group).isRefusedFor(group, "missing");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"crank", "shoe", "cockpit", "cockpit.bar", "contact", "seatpost", "saddle", "ride", "charted"})
    void aGroupThatIsOptionalMayBeLeftOut(String group) {
        assertThat(BikeText.whole().without(group).read().hasGroup(group)).isFalse();
    }

    @ParameterizedTest
    @ValueSource(strings = {"crank", "cockpit", "cockpit.bar", "contact", "seatpost", "saddle", "frame.topTube"})
    void aGroupThatIsBegunButEmptyIsRefused(String group) {
        BikeText.whole().withRaw(group, "{}").isRefusedFor(group + ".", "missing");
    }

    @ParameterizedTest
    @ValueSource(strings = {"shoe", "ride", "charted"})
    void aGroupOfDefaultsAloneMayBeEmpty(String group) {
        assertThat(BikeText.whole().withRaw(group, "{}").read().hasGroup(group)).isTrue();
    }

    @ParameterizedTest
    @ValueSource(strings = {"[]", "5", "\"x\"", "null"})
    void aGroupThatIsNoObjectIsRefused(String raw) {
        BikeText.whole().withRaw("crank", raw).isRefusedFor("crank");
    }

    @Test
    void aBarWithoutItsStemIsRefused() {
        BikeText bar = BikeText.plain()
                .withRaw("cockpit", "{\"bar\": {\"widthMm\": 400, \"hoodForwardMm\": 100, \"hoodRiseMm\": 10}}");
        bar.isRefusedFor("cockpit.headsetCoverMm", "missing");
    }

    @Test
    void aChainstayShorterThanTheDropIsRefused() {
        BikeText.whole()
                .with("frame.chainstayMm", 120)
                .with("frame.bbDropMm", 140)
                .isRefusedFor("frame.chainstayMm", "120");
    }

    @ParameterizedTest
    @ValueSource(strings = {"\"rakeline/worksheet\"", "\"\"", "5", "null"})
    void anotherFormatIsRefused(String raw) {
        BikeText.whole().withRaw("format", raw).isRefusedFor("format", "rakeline/bike");
    }

    @Test
    void aMissingFormatIsRefused() {
        BikeText.whole().without("format").isRefusedFor("format");
    }

    @Test
    void aNewerVersionIsRefusedAsSuch() {
        BikeText.whole().withRaw("version", "2").isRefusedFor("version", "2", "newer", "1");
    }

    @ParameterizedTest
    @ValueSource(strings = {"0", "-1", "1.5", "\"1\"", "null", "true"})
    void anotherVersionIsRefused(String raw) {
        BikeText.whole().withRaw("version", raw).isRefusedFor("version", "accepted");
    }

    @Test
    void aMissingVersionIsRefused() {
        BikeText.whole().without("version").isRefusedFor("version");
    }

    @ParameterizedTest
    @ValueSource(strings = {"5", "\"\"", "\"  \"", "null", "[]"})
    void aNameThatIsNoTextIsRefused(String raw) {
        BikeText.whole().withRaw("name", raw).isRefusedFor("name");
    }

    @Test
    void aMissingNameIsRefused() {
        BikeText.whole().without("name").isRefusedFor("name");
    }

    @Test
    void provenanceIsReadByKey() {
        Bike bike = BikeText.whole()
                .withRaw("provenance", "{\"frame.stackMm\": {\"from\": \"measured\", \"u\": 2}}")
                .read();
        assertThat(bike.provenance())
                .containsExactly(
                        Map.entry("frame.stackMm", new Provenance(Optional.of(Provenance.Origin.MEASURED), 2)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"charted", "measured", "assumed", "solved"})
    void anOriginIsOneOfFour(String word) {
        Bike bike = BikeText.whole()
                .withRaw("provenance", "{\"frame.stackMm\": {\"from\": \"" + word + "\"}}")
                .read();
        assertThat(bike.provenance().get("frame.stackMm").from().orElseThrow().word())
                .isEqualTo(word);
    }

    @Test
    void anUncertaintyMayStandAlone() {
        Bike bike = BikeText.whole()
                .withRaw("provenance", "{\"frame.stackMm\": {\"u\": 1.5}}")
                .read();
        assertThat(bike.provenance().get("frame.stackMm").standardUncertainty()).isCloseTo(1.5, within(0.0));
    }

    @Test
    void anotherOriginIsRefused() {
        BikeText.whole()
                .withRaw("provenance", "{\"frame.stackMm\": {\"from\": \"guessed\"}}")
                .isRefusedFor("frame.stackMm", "guessed", "charted", "measured", "assumed", "solved");
    }

    @Test
    void anOriginInCapitalsIsRefused() {
        BikeText.whole()
                .withRaw("provenance", "{\"frame.stackMm\": {\"from\": \"MEASURED\"}}")
                .isRefusedFor("frame.stackMm", "MEASURED");
    }

    @ParameterizedTest
    @ValueSource(strings = {"-1", "NaN", "Infinity", "\"2\"", "null"})
    void anotherUncertaintyIsRefused(String raw) {
        BikeText.whole()
                .withRaw("provenance", "{\"frame.stackMm\": {\"u\": " + raw + "}}")
                .isRefusedFor("frame.stackMm");
    }

    @Test
    void provenanceOfAnUnknownKeyIsRefusedWithTheNearest() {
        BikeText.whole()
                .withRaw("provenance", "{\"frame.stakMm\": {\"u\": 1}}")
                .isRefusedFor("provenance", "frame.stakMm", "frame.stackMm");
    }

    @ParameterizedTest
    @ValueSource(strings = {"5", "[]", "{\"frame.stackMm\": 5}", "{\"frame.stackMm\": {\"source\": \"tape\"}}"})
    void provenanceOfAnotherShapeIsRefused(String raw) {
        BikeText.whole().withRaw("provenance", raw).isRefusedFor("provenance");
    }

    @ParameterizedTest
    @ValueSource(strings = {"[]", "5", "\"bike\"", "null", "true"})
    void aFileThatIsNoObjectIsRefused(String text) {
        BikeText.assertRefused(text);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " \n\t", "\uFEFF"})
    void aFileWithNothingInItIsRefused(String text) {
        BikeText.assertRefused(text);
    }

    @Test
    void somethingBehindTheObjectIsRefused() {
        BikeText.assertRefused(BikeText.plain().text() + "{}");
    }

    @Test
    void aFileCutShortIsRefused() {
        String text = BikeText.plain().text();
        BikeText.assertRefused(text.substring(0, text.length() / 2));
    }

    @Test
    void binaryDataIsRefused() {
        byte[] bytes = {(byte) 0x89, 'P', 'N', 'G', 0, 1, 2, (byte) 0xFF};
        assertRefusedPlainly(bytes);
    }

    @Test
    void zeroBytesAreRefused() {
        assertRefusedPlainly(new byte[4096]);
    }

    @Test
    void anotherEncodingIsRefused() {
        assertRefusedPlainly(BikeText.plain().text().getBytes(StandardCharsets.UTF_16));
        assertRefusedPlainly(
                BikeText.plain().withRaw("name", "\"Größe\"").text().getBytes(StandardCharsets.ISO_8859_1));
    }

    @Test
    void deepNestingIsRefused() {
        BikeText.assertRefused("[".repeat(100_000));
        BikeText.assertRefused("{\"frame\":".repeat(100_000));
    }

    @Test
    void aByteOrderMarkIsRead() {
        assertThat(BikeText.read("\uFEFF" + BikeText.plain().text()))
                .isEqualTo(BikeText.plain().read());
    }

    @Test
    void linesOfAnySystemAreRead() {
        String text = BikeText.plain().text();
        assertThat(BikeText.read(text.replace("\n", "\r\n")))
                .isEqualTo(BikeText.plain().read());
        assertThat(BikeText.read(text.replace("\n", "\r")))
                .isEqualTo(BikeText.plain().read());
    }

    @Test
    void aNameKeepsItsLetters() {
        assertThat(BikeText.plain().withRaw("name", "\"Größe İıß 小\"").read().name())
                .isEqualTo("Größe İıß 小");
    }

    @Test
    void everyEndOfARangeIsAccepted() {
        for (Input input : Inputs.all()) {
            double from = input.quantity().accepted().from();
            double to = input.quantity().accepted().to();
            assertThat(BikeText.whole().with(input.key(), from).read().get(input))
                    .isEqualTo(from);
            assertThat(BikeText.whole().with(input.key(), to).read().get(input)).isEqualTo(to);
        }
    }

    private static void assertRefusedPlainly(byte[] bytes) {
        assertThatThrownBy(() -> BikeFile.read(bytes, BikeText.FILE)).satisfies(BikeText::isOnePlainSentence);
    }

    private static String range(Input input) {
        return input.quantity().acceptedWords();
    }
}
