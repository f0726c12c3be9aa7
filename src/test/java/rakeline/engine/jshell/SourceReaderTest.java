package rakeline.engine.jshell;

import static org.assertj.core.api.Assertions.assertThat;

import jdk.jshell.JShell;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rakeline.engine.Definition;
import rakeline.engine.RowSource;
import rakeline.engine.SnippetSource;

class SourceReaderTest {
    private static JShell shell;
    private static SourceReader reader;

    @BeforeAll
    static void open() {
        shell = Shells.open(new NoEngine());
        reader = new SourceReader(shell.sourceCodeAnalysis());
    }

    @AfterAll
    static void close() {
        shell.close();
    }

    private static RowSource read(String text) {
        return reader.read(text);
    }

    @Test
    void aRowIsTakenApartIntoSnippetsAtTheirPlaces() {
        RowSource row = read("// first\nint a = 1; int b = 2;\n\na + b");
        assertThat(row.snippets().stream().map(snippet -> snippet.text().strip()))
                .containsExactly("// first\nint a = 1;", "int b = 2;", "a + b");
        assertThat(row.snippets().get(2).offset()).isEqualTo(row.text().indexOf("b = 2;") + 6);
    }

    @Test
    void aRowOfNothingButACommentHasNoSnippets() {
        assertThat(read("  // nothing\n").snippets()).isEmpty();
    }

    @Test
    void variablesMethodsClassesAndImportsAreDefined() {
        assertThat(read("int a = 1, b = 2;\nvar c = a;\nint f(int x, String y) { return x; }\nrecord P(int q) {}\n"
                                + "import java.time.Duration;")
                        .defines())
                .containsExactly(
                        Definition.variable("a"),
                        Definition.variable("b"),
                        Definition.variable("c"),
                        Definition.method("f", "int, String"),
                        Definition.type("P", false),
                        Definition.imported("Duration"));
    }

    @Test
    void localNamesAreNotTakenFromOutside() {
        assertThat(read("{ int i = k; for (int j = 0; j < i; j++) { int l = j; } }")
                        .uses())
                .containsExactly("k");
    }

    @Test
    void aNameIsFreeAgainBehindItsBlock() {
        assertThat(read("{ { int i = 1; } i(); System.out.println(i); }").uses())
                .contains("i", "i()", "System");
    }

    @Test
    void parametersOfLambdasAndMethodsAreLocal() {
        assertThat(read("Function<Integer, Integer> f = x -> x + y;").uses())
                .containsExactlyInAnyOrder("Function", "Integer", "y");
        assertThat(read("double g(double x) { return x * factor; }").uses()).containsExactly("factor");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '~',
            value = {
                "if (o instanceof Foo f) f.go(); ~o Foo",
                "if (o instanceof Foo f && f.ok()) f.go(); ~o Foo",
                "if (o instanceof Foo f) f.go(); else f.stop(); ~o Foo f",
                "if (!(o instanceof Foo f)) f.stop(); else f.go(); ~o Foo f",
                "if (!(o instanceof Foo f) || f.bad()) f.stop(); ~o Foo f",
                "{ if (!(o instanceof Foo f)) return; f.go(); } ~o Foo",
                "{ if (!(o instanceof Foo f)) { throw new E(); } f.go(); } ~o Foo E",
                "{ if (o instanceof Foo f) f.go(); f.stop(); } ~o Foo f",
                "{ if (o instanceof Foo f) { f.go(); } else { return; } f.go(); } ~o Foo",
                "boolean b = o instanceof Foo f && f.ok(); ~o Foo",
                "boolean b = o instanceof Foo f || f.ok(); ~o Foo f",
                "String s = o instanceof Foo f ? f.name() : f; ~String o Foo f",
                "while (!(o instanceof Foo f)) { next(); } ~o Foo next()",
                "for (; o instanceof Foo f; f.go()) f.stop(); ~o Foo",
                "Function<Object, Object> g = x -> x instanceof Foo f ? f : x; ~Function Object Foo"
            })
    void whatAPatternBindsIsTheSnippetsOwnWhereItHolds(String snippet, String uses) {
        assertThat(read(snippet).uses()).containsExactlyInAnyOrder(uses.split(" "));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "record P(int x, int y) { } |",
                "record P(int x, int y) { P { if (x < least) throw new E(y); } } |least E",
                "record P(int x) { int twice() { return 2 * x() + x + other(); } } |other()",
                "record P(int x) { static P of(int x) { return new P(x + y); } } |y",
                "int r = switch (d) { case 1 -> a; case 2 -> { int a = 3; yield a + b; } default -> c; }; |d a b c",
                "int r = switch (d) { case 1: int a = 2; yield a; default: yield b; }; |d b",
                "enum E { ONE, TWO; int n = k; } |k",
                "sealed interface S permits A, B { } |A B",
                "{ record L(int x) { } var l = new L(z); l.x(); } |z",
                "var v = new Object() { int n = m; int twice() { return n * 2; } }; |Object m"
            })
    void recordsSwitchesAndEnumsKeepTheirOwnNames(String snippet, String uses) {
        String[] expected = uses == null ? new String[0] : uses.split(" ");
        assertThat(read(snippet).uses()).containsExactlyInAnyOrder(expected);
    }

    @Test
    void membersOfAClassAreItsOwn() {
        assertThat(read("class A { int n; int next() { return n++ + outer(); } int twice() { return next() * 2; } }")
                        .uses())
                .containsExactly("outer()");
    }

    @Test
    void methodsAndVariablesOfOneNameAreToldApart() {
        assertThat(read("size(list.size())").uses()).containsExactlyInAnyOrder("size()", "list");
    }

    @Test
    void assignmentsAreFoundAtTheirRoot() {
        assertThat(read("a[0] = 1;\nb.c = 2;\nd++;\ne += f;").assigns()).containsExactlyInAnyOrder("a", "b", "d", "e");
    }

    @Test
    void aClassWithAStaticFieldKeepsState() {
        assertThat(read("class A { static int n; }").keepsState()).isTrue();
        assertThat(read("class A { static final int N = 3; int m; }").keepsState())
                .isFalse();
    }

    @Test
    void aDialIsReadWithItsPlainEnds() {
        assertThat(read("double head = dial(\"Head\", \"°\", -5, 74.5, 0.1, 71);")
                        .snippets()
                        .get(0)
                        .control())
                .contains(new SnippetSource.Declared("head", true, -5, 74.5));
    }

    @Test
    void anEndOfADialThatIsNoPlainNumberIsNotKnown() {
        assertThat(read("double head = dial(\"Head angle\", \"°\", low, 74, 0.1, 71);")
                        .snippets()
                        .get(0)
                        .control())
                .contains(new SnippetSource.Declared("head", true, Double.NaN, 74));
    }

    @Test
    void aBikeMayWidenTheRangeOfADialSoThatItsEndsAreNotKnown() {
        assertThat(read("double head = dial(HEAD_ANGLE, xs, 69, 74);")
                        .snippets()
                        .get(0)
                        .control())
                .contains(new SnippetSource.Declared("head", true, Double.NaN, Double.NaN));
    }

    @Test
    void aDialWithinAnExpressionIsAFault() {
        assertThat(read("int a = 1;\ndouble twice = 2 * dial(\"Head\", \"°\", 69, 74, 0.1, 71);")
                        .fault())
                .hasValueSatisfying(fault -> {
                    assertThat(fault.line()).isEqualTo(2);
                    assertThat(fault.column()).isEqualTo(20);
                    assertThat(fault.sentence()).startsWith("dial(…) stands only as the whole initialiser");
                });
    }

    @Test
    void aDialInAMethodOrThroughPreludeIsAFault() {
        assertThat(read("double f() { return dial(\"a\", \"\", 1, 2, 1, 1); }").fault())
                .isPresent();
        assertThat(read("if (true) Prelude.dial(\"a\", \"\", 1, 2, 1, 1);").fault())
                .isPresent();
    }

    @Test
    void aFirstValueMadeFromTheVariableItselfIsAFault() {
        assertThat(reader.read("int a = a + 1;").fault().orElseThrow().sentence())
                .isEqualTo("a is used in its own first value; give it one from the names above.");
    }

    @Test
    void aFunctionMayCallItself() {
        assertThat(reader.read("IntUnaryOperator f = n -> n < 1 ? 1 : n * f.applyAsInt(n - 1);")
                        .fault())
                .isEmpty();
    }

    @Test
    void whatIsNoJavaIsOneSnippetThatDoesNotParse() {
        RowSource row = read("int k = 3 +;");
        assertThat(row.snippets()).hasSize(1);
        assertThat(row.snippets().get(0).parsed()).isFalse();
    }
}
