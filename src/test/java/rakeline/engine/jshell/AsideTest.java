package rakeline.engine.jshell;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rakeline.worksheet.Worksheet;

/** Names that no row took when their row ran, and that one comes to take. */
@Tag("process")
class AsideTest {
    @RegisterExtension
    static final Running page = Running.standard();

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    double a = 1.5;                                     | a * 2                       | 3
                    int a = 1, b = 2;                                   | a + b * 10                  | 21
                    int f(int x) { return x + 1; }                      | f(4)                        | 5
                    <T extends Comparable<T>> T top(T a, T b) { return a.compareTo(b) > 0 ? a : b; } | top(3, 7) | 7
                    record Tube(double length) {}                       | new Tube(530).length()      | 530
                    enum Bar { FLAT, DROP }                             | Bar.DROP.ordinal()          | 1
                    interface Part { int grams(); }                     | ((Part) () -> 250).grams()  | 250
                    class Ring { static int teeth = 34; int own = 1; }  | Ring.teeth + new Ring().own | 35
                    var both = new Object() { int a = 3; };             | both.a                      | 3
                    int a = 2; for (int i = 0; i < 3; i++) a *= 2;      | a                           | 16
                    """)
    void aRowCanTakeThemLater(String giver, String taker, String value) throws InterruptedException {
        page.run(giver, "0");
        assertThat(page.run(giver, taker).value("r2")).isEqualTo(value);
    }

    @Test
    void theRowThatGivesThemDoesNotRunAgain() throws InterruptedException {
        page.run("double chance = Math.random();", "0");
        String before = page.value("r1");
        page.run("double chance = Math.random();", "double again = chance;");
        assertThat(Stream.of(page.value("r1"), page.value("r2"))).containsOnly(before);
    }

    @Test
    void anObjectIsTheSameForTheRowThatComesToTakeIt() throws InterruptedException {
        page.run("class Ring {}", "Ring ring = new Ring();", "0");
        assertThat(page.run("class Ring {}", "Ring ring = new Ring();", "ring instanceof Ring")
                        .value("r3"))
                .isEqualTo("true");
    }

    @Test
    void theyFollowAnEditOnceTheyAreTaken() throws InterruptedException {
        page.run("int a = 1;", "0");
        page.run("int a = 1;", "a + 1");
        assertThat(page.run("String a = \"x\";", "a + 1").value("r2")).isEqualTo("\"x1\"");
    }

    @Test
    void theyCanBeLeftAloneAndTakenAgain() throws InterruptedException {
        for (String taker : new String[] {"0", "a + 1", "0", "a + 2"}) {
            page.run("int a = 1;", taker);
            page.run("int a = 5;", taker);
        }
        assertThat(page.value("r2")).isEqualTo("7");
    }

    @Test
    void oneRowBringsBackTheNamesOfSeveral() throws InterruptedException {
        page.run("int a = 1;", "int f(int x) { return x * 10; }", "int f(int x, int y) { return x * y; }", "0");
        assertThat(page.run(
                                "int a = 1;",
                                "int f(int x) { return x * 10; }",
                                "int f(int x, int y) { return x * y; }",
                                "f(a) + f(3, 4)")
                        .value("r4"))
                .isEqualTo("22");
    }

    @Test
    void aNameThatIsTakenThroughOneThatIsAsideIsKnownToo() throws InterruptedException {
        page.run("int a = 1;", "int b = a + 1;", "0");
        assertThat(page.run("int a = 1;", "int b = a + 1;", "a + b").value("r3"))
                .isEqualTo("3");
    }

    @Test
    void anotherWorkerKnowsThem() throws InterruptedException {
        Worksheet before = Pages.of(Pages.row("a", "int a = 1;"), Pages.row("z", "System.exit(3);"));
        page.run(before);
        page.run(Pages.of(Pages.row("a", "int a = 1;"), Pages.row("z", "a + 1")));
        assertThat(page.value("z")).isEqualTo("2");
    }

    @Test
    void anImportThatComesLaterMeansNothingForThem() throws InterruptedException {
        String giver = "class Duration { int days = 3; }\nDuration stay = new Duration();";
        page.run(Pages.of(Pages.row("a", giver), Pages.row("z", "0")));
        page.run(
                Pages.of(Pages.row("a", giver), Pages.row("i", "import java.util.List;"), Pages.row("z", "stay.days")));
        assertThat(page.value("z")).isEqualTo("3");
    }

    @Test
    void whatIsThrownInThemIsSaidWithTheirLine() throws InterruptedException {
        String giver = "int f(int x) {\n  return 1 / x;\n}";
        page.run(Pages.of(Pages.row("a", giver), Pages.row("z", "0")));
        page.run(Pages.of(Pages.row("a", giver), Pages.row("z", "f(0)")));
        assertThat(page.message("z")).startsWith("Line 1:");
    }
}
