package rakeline.worksheet;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_16LE;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.InputStream;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import rakeline.quantity.Refusal;
import rakeline.worksheet.Row.Note;
import rakeline.worksheet.Row.Snippet;
import rakeline.worksheet.Worksheet.Audience;
import rakeline.worksheet.Worksheet.View;

class WorksheetFileTest {
    private static final String ROWS = "\"rows\": [{\"id\": \"r1\", \"note\": [\"a\"]}]";

    @Test
    void everythingInAFileOfVersionOneIsRead() throws IOException {
        assertThat(WorksheetFile.read(versionOne(), "one.rakeline"))
                .isEqualTo(new Worksheet(
                        "Räder für große Schritte",
                        "What fork offset does.",
                        Optional.of(Audience.STUDENT),
                        List.of("S1", "S4"),
                        View.READ,
                        List.of("demo-data/bikes/small.bike.json"),
                        List.of(
                                new Note("r1", "# Trail\n\nTrail grows as *offset* shrinks."),
                                new Snippet(
                                        "r2",
                                        "double head = dial(\"Head angle\", \"°\", 69, 74, 0.1, 71.3);\n"
                                                + "String path = \"C:\\\\bikes\";",
                                        true,
                                        true,
                                        OptionalInt.of(90)),
                                Snippet.of("last-one", "")),
                        Map.of("head", 71.3, "spacers", 20.0),
                        Map.of("b", "demo-data/bikes/small.bike.json")));
    }

    @Test
    void whatIsWrittenOfAFileOfThisVersionIsThatFileByteForByte() throws IOException {
        byte[] file = versionOne();
        assertThat(new String(WorksheetFile.write(WorksheetFile.read(file, "one.rakeline")), UTF_8))
                .isEqualTo(new String(file, UTF_8));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
    void readingWhatWasWrittenGivesTheSamePage(long seed) {
        Worksheet page = random(new Random(seed));
        assertThat(WorksheetFile.read(WorksheetFile.write(page), "random")).isEqualTo(page);
    }

    @Test
    void halfASurrogatePairSurvivesTheFile() {
        Worksheet page = Worksheet.empty("t").withRows(List.of(new Note("r1", "a\ud83db \ud83d\udeb2")));
        assertThat(WorksheetFile.read(WorksheetFile.write(page), "half")).isEqualTo(page);
    }

    @Test
    void lineEndsOfTheTextAreLineFeedsWhateverTheyWere() {
        assertThat(new Note("r1", "a\r\nb\rc\n").text()).isEqualTo("a\nb\nc\n");
    }

    @Test
    void dialsStayInTheOrderInWhichTheyWereSet() {
        Worksheet page = Worksheet.empty("t").withDial("z", 1).withDial("a", 2).withDial("m", 3);
        assertThat(WorksheetFile.read(WorksheetFile.write(page), "order")
                        .dials()
                        .keySet())
                .containsExactly("z", "a", "m");
    }

    @Test
    void aByteOrderMarkIsDropped() {
        assertThat(read("\uFEFF" + page("\"title\": \"t\", " + ROWS)).title()).isEqualTo("t");
    }

    @Test
    void carriageReturnsBetweenTheLinesAreRead() throws IOException {
        String crlf = new String(versionOne(), UTF_8).replace("\n", "\r\n");
        assertThat(read(crlf)).isEqualTo(WorksheetFile.read(versionOne(), "one.rakeline"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "{'id':'r2','snipet':['x']} | rows[1].snipet (line 1) is not known in a row; did you mean snippet?",
                "{'id':'r2','colour':[]} | rows[1].colour (line 1) is not known in a row; accepted are id, note, snippet, wait, fold, timeLimitSeconds.",
                "{'id':'r2','id':'r3','note':[]} | rows[1].id (line 1) stands there a second time; the first is on line 1.",
                "{'id':'r1','note':[]} | rows[1].id (line 1) is \"r1\" like rows[0].id (line 1); accepted is an id of its own for each row.",
                "{'note':[]} | rows[1] (line 1) has no \"id\", which every one needs.",
                "{'id':'','note':[]} | rows[1] (line 1): the row id \"\" is not one; accepted are up to 40 of A-Z, a-z, 0-9, - and _.",
                "{'id':7,'note':[]} | rows[1].id (line 1) is 7; accepted is text in quotation marks.",
                "{'id':'r2'} | rows[1] (line 1) has neither a note nor a snippet; accepted is one of them.",
                "{'id':'r2','note':[],'snippet':[]} | rows[1] (line 1) has both a note and a snippet; accepted is one of them.",
                "{'id':'r2','note':'text'} | rows[1].note (line 1) is \"text\"; accepted is a list in [ ].",
                "{'id':'r2','note':['a\\nb']} | rows[1].note[0] (line 1) holds a line break; accepted is one line in each item.",
                "{'id':'r2','note':[],'wait':true} | rows[1].wait (line 1) is not known in a note; accepted are id, note, fold.",
                "{'id':'r2','snippet':[],'wait':'yes'} | rows[1].wait (line 1) is \"yes\"; accepted is true or false.",
                "{'id':'r2','snippet':[],'timeLimitSeconds':0} | rows[1] (line 1): the time limit is 0 s; accepted is a whole number 1..3600.",
                "{'id':'r2','snippet':[],'timeLimitSeconds':1.5} | rows[1].timeLimitSeconds (line 1) is 1.5; accepted is a whole number.",
                "{'id':'r2','snippet':null} | rows[1].snippet (line 1) is null; accepted is a list in [ ].",
                "'text' | rows[1] (line 1) is \"text\"; accepted is a group in { }."
            })
    void aRowThatIsNotOneIsRefusedWithItsPlace(String row, String sentence) {
        String rows = "\"title\": \"t\", \"rows\": [{\"id\": \"r1\", \"note\": []}, " + row.replace('\'', '"') + "]";
        assertRefused(page(rows), sentence);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "'title':1, R | title (line 1) is 1; accepted is text in quotation marks.",
                "R | the file has no \"title\", which every one needs.",
                "'title':'t' | the file has no \"rows\", which every one needs.",
                "'title':'t', 'rows':{} | rows (line 1) is a group; accepted is a list in [ ].",
                "'title':'t', 'row':[], R | row (line 1) is not known in a worksheet; did you mean rows?",
                "'title':'t', 'results':[], R | results (line 1) is not known in a worksheet; accepted are format, version, title, about, for, answers, view, rack, rows, dials, picks.",
                "'title':'t', 'for':'rider', R | for (line 1) is \"rider\"; accepted is educator, fitter, student.",
                "'title':'t', 'view':'show', R | view (line 1) is \"show\"; accepted is write, read.",
                "'title':'t', 'rack':'a', R | rack (line 1) is \"a\"; accepted is a list in [ ].",
                "'title':'t', R, 'dials':{'head':NaN} | dials.head (line 1) is NaN; accepted is a finite number with a decimal point, without a unit, as in 71.3.",
                "'title':'t', R, 'dials':{'head':1e999} | dials.head (line 1) is 1e999; accepted is a finite number with a decimal point, without a unit, as in 71.3.",
                "'title':'t', R, 'dials':{'head':'71.3°'} | dials.head (line 1) is \"71.3°\"; accepted is a finite number with a decimal point, without a unit, as in 71.3.",
                "'title':'t', R, 'dials':{'head':'71,3'} | dials.head (line 1) is \"71,3\"; accepted is a finite number with a decimal point, without a unit, as in 71.3.",
                "'title':'t', R, 'dials':{'head angle':71} | dials.head angle (line 1): \"head angle\" is not a variable's name; dials and picks go by their variable.",
                "'title':'t', R, 'picks':{'class':'a'} | picks.class (line 1): \"class\" is not a variable's name; dials and picks go by their variable.",
            })
    void aPageThatIsNotOneIsRefusedWithItsPlace(String keys, String sentence) {
        assertRefused(page(keys.replace('\'', '"').replace("R", ROWS)), sentence);
    }

    @Test
    void aDecimalCommaIsNamed() {
        assertRefused(
                page("\"title\": \"t\", " + ROWS + ",\n\"dials\": {\"head\": 71,3}"),
                "line 2, column 22 is not JSON, at the end of \"\"dials\": {\"head\": 71,3\";"
                        + " a number takes the decimal point, as in 71.3.");
    }

    @Test
    void aCommaTooManyIsNoDecimalComma() {
        assertRefused(
                page("\"title\": \"t\", " + ROWS + ",\n\"dials\": {\"head\": 71,}"),
                "line 2, column 22 is not JSON, at the end of \"\"dials\": {\"head\": 71,}\".");
    }

    @Test
    void everyVersionSoFarIsKeptAndRead() {
        assertThat(IntStream.rangeClosed(1, WorksheetFile.VERSION))
                .allSatisfy(version -> assertThat(
                                WorksheetFile.read(resource(version), "old").rows())
                        .isNotEmpty());
    }

    @Test
    void aNewerVersionIsRefusedBeforeItsUnknownKeys() {
        assertRefused(
                "{\"format\": \"rakeline/worksheet\", \"version\": 2, \"tabs\": []}",
                "version (line 1) is 2: the worksheet was made by a newer Rakeline; this one reads up to 1.");
    }

    @Test
    void aVersionBeforeTheFirstIsRefused() {
        assertRefused(
                "{\"format\": \"rakeline/worksheet\", \"version\": 0}", "version (line 1) is 0; accepted is 1..1.");
    }

    @Test
    void anotherFormatIsRefused() {
        assertRefused(
                "{\"format\": \"rakeline/bike\", \"version\": 1}",
                "format (line 1) is \"rakeline/bike\"; accepted is \"rakeline/worksheet\".");
    }

    @Test
    void JsonWithoutAFormatIsRefused() {
        assertRefused("{}", "the file has no \"format\", which every one needs.");
    }

    @Test
    void JsonThatIsNoGroupIsRefused() {
        assertRefused("[1]", "the file is a list; accepted is a group in { }.");
    }

    @Test
    void aFileThatEndsInTheMiddleIsRefused() {
        assertRefused(
                "{\n\"format\": \"rakeline/worksheet\",\n\"ver",
                "line 3: the file ends in the middle; it seems cut off.");
    }

    @Test
    void somethingAfterTheEndIsRefused() {
        assertRefused("{}\n{}", "line 2: something follows after the end.");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " \r\n\t", "\uFEFF"})
    void anEmptyFileIsRefused(String text) {
        assertRefused(text, "the file is empty.");
    }

    @Test
    void aFileInAnotherEncodingIsRefused() {
        assertRefused("{\"title\": \"Räder\"}".getBytes(ISO_8859_1), "the file is not text in UTF-8.");
    }

    @Test
    void aFileInSixteenBitsIsRefused() {
        assertRefused("{\"title\": 1}".getBytes(UTF_16LE), "line 1, column 3 is not JSON, at the end of \"{?\"\".");
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void aBinaryFileIsRefusedInOneLine(long seed) {
        byte[] bytes = new byte[4096];
        new Random(seed).nextBytes(bytes);
        assertThatThrownBy(() -> WorksheetFile.read(bytes, "b.rakeline"))
                .isInstanceOf(Refusal.class)
                .message()
                .startsWith("b.rakeline: ")
                .hasLineCount(1);
    }

    @Test
    void aNumberOfAThousandDigitsAndMoreIsRefused() {
        assertRefused(
                page("\"title\": \"t\", " + ROWS + ", \"dials\": {\"head\": " + "7".repeat(2000) + "}"),
                "the file holds a number or a name that is far too long.");
    }

    @Test
    void aKeyOfManyThousandLettersIsRefused() {
        assertRefused(
                page("\"" + "x".repeat(60_000) + "\": 1"), "the file holds a number or a name that is far too long.");
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void aDamagedFileIsReadOrRefusedInOneLine(long seed) throws IOException {
        Random random = new Random(seed);
        for (int i = 0; i < 40; i++) {
            byte[] bytes = damaged(versionOne(), random);
            try {
                assertThat(WorksheetFile.write(WorksheetFile.read(bytes, "d.rakeline")))
                        .isNotEmpty();
            } catch (Refusal refusal) {
                assertThat(refusal.getMessage()).startsWith("d.rakeline: ").hasLineCount(1);
            }
        }
    }

    private static byte[] damaged(byte[] bytes, Random random) {
        byte[] damaged = Arrays.copyOf(bytes, bytes.length - random.nextInt(2) * random.nextInt(bytes.length));
        for (int i = random.nextInt(4); i > 0 && damaged.length > 0; i--) {
            String marks = "{}[]\":,0-e\\\n\u0000x";
            damaged[random.nextInt(damaged.length)] = (byte) marks.charAt(random.nextInt(marks.length()));
        }
        return damaged;
    }

    @Test
    void zerosAreRefused() {
        assertRefused(new byte[100], "line 1, column 2 is not JSON, at the end of \"??\".");
    }

    @Test
    void aDeeplyNestedFileIsRefused() {
        assertRefused("[".repeat(100_000), "line 1: the file is nested deeper than 30 levels.");
    }

    @Test
    void aFileOfFiftyMegabytesIsRefused() {
        byte[] bytes = new byte[50_000_000];
        Arrays.fill(bytes, (byte) ' ');
        assertRefused(bytes, "the file is larger than 8 MB, the most that a worksheet may have.");
    }

    @Test
    void aPageThatCouldNotBeReadAgainIsNotWritten() {
        Worksheet page = Worksheet.empty("t").withRows(List.of(new Note("r1", "x".repeat(8_000_000))));
        assertThatThrownBy(() -> WorksheetFile.write(page))
                .hasMessage("the file is larger than 8 MB, the most that a worksheet may have.");
    }

    @Test
    void aLongValueIsQuotedInPart() {
        assertRefused(
                page("\"title\": \"t\", " + ROWS + ", \"view\": \"" + "x".repeat(500) + "\""),
                "view (line 1) is \"" + "x".repeat(40) + "…\"; accepted is write, read.");
    }

    private static byte[] versionOne() throws IOException {
        return resource(1);
    }

    private static byte[] resource(int version) throws IOException {
        try (InputStream in = WorksheetFileTest.class.getResourceAsStream("version-" + version + ".rakeline")) {
            return in.readAllBytes();
        }
    }

    private static String page(String keys) {
        return "{\"format\": \"rakeline/worksheet\", \"version\": 1, " + keys + "}";
    }

    private static Worksheet read(String text) {
        return WorksheetFile.read(text.getBytes(UTF_8), "t.rakeline");
    }

    private static void assertRefused(String text, String sentence) {
        assertRefused(text.getBytes(UTF_8), sentence);
    }

    private static void assertRefused(byte[] bytes, String sentence) {
        assertThatThrownBy(() -> WorksheetFile.read(bytes, "t.rakeline"))
                .isInstanceOf(Refusal.class)
                .hasMessage("t.rakeline: " + sentence);
    }

    private static Worksheet random(Random random) {
        Worksheet page = Worksheet.empty(text(random))
                .withAbout(text(random))
                .withAnswers(List.of(text(random)))
                .withRack(List.of(text(random), text(random)))
                .withPick("p", text(random))
                .withDial("d", random.nextGaussian() * Math.pow(10, random.nextInt(40) - 20))
                .withDial("e", -0.0)
                .withDial("f", Double.MIN_VALUE)
                .withDial("größe", random.nextInt());
        return page.withRows(
                IntStream.range(0, 12).mapToObj(i -> row(random, "r" + i)).toList());
    }

    private static Row row(Random random, String id) {
        OptionalInt limit = random.nextBoolean() ? OptionalInt.empty() : OptionalInt.of(1 + random.nextInt(3600));
        return random.nextBoolean()
                ? new Note(id, text(random), random.nextBoolean())
                : new Snippet(id, text(random), random.nextBoolean(), random.nextBoolean(), limit);
    }

    private static String text(Random random) {
        String letters = "ab \n\t\"\\/{}[]:,°äß–\u0000\u001f\u2028\uFEFF";
        StringBuilder text = new StringBuilder();
        for (int i = random.nextInt(30); i > 0; i--) {
            text.append(letters.charAt(random.nextInt(letters.length())));
        }
        return text.append(random.nextBoolean() ? "🚲" : "\n").toString();
    }
}
