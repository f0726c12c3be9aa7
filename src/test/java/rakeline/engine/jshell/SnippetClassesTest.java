package rakeline.engine.jshell;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SnippetClassesTest {
    private static final String HEAD = "class $JShell$1 { public static double head = %s; }";
    private static final String ONE = "class $JShell$2 { public static double one() { return $JShell$1.head + 1; } }";
    private static final String OTHER = "class $JShell$3 { public static double other() { return 7; } }";

    private final SnippetClasses classes = new SnippetClasses();

    @TempDir
    private Path folder;

    @Test
    void aClassComesTheFirstTimeByTheNameThatItWasGiven() throws IOException {
        assertThat(classes.take(compiled(HEAD.formatted(1)))).containsOnlyKeys("REPL.$JShell$1");
    }

    @Test
    void aClassThatIsOtherThanBeforeComesByAnotherName() throws IOException {
        classes.take(compiled(HEAD.formatted(1)));
        classes.take(compiled(HEAD.formatted(2)));
        assertThat(classes.take(compiled(HEAD.formatted(3)))).containsOnlyKeys("REPL.$JShell$1v3");
        assertThat(classes.nameOf("REPL.$JShell$1")).isEqualTo("REPL.$JShell$1v3");
    }

    @Test
    void aClassThatIsAsBeforeIsNotTakenAgain() throws IOException {
        classes.take(compiled(HEAD.formatted(1), OTHER));
        assertThat(classes.take(compiled(HEAD.formatted(2), OTHER))).containsOnlyKeys("REPL.$JShell$1v2");
    }

    @Test
    void aClassThatMeansOneThatIsNewsIsNewsItself() throws Exception {
        classes.take(compiled(HEAD.formatted(1), ONE));
        assertThat(classes.take(compiled(HEAD.formatted(2), ONE)))
                .containsOnlyKeys("REPL.$JShell$1v2", "REPL.$JShell$2v2");
        assertThat(call("REPL.$JShell$2v2", "one")).isEqualTo(3.0);
        assertThat(call("REPL.$JShell$2", "one")).isEqualTo(2.0);
    }

    @Test
    void aClassCompiledLaterMeansTheOneInForce() throws Exception {
        classes.take(compiled(HEAD.formatted(1)));
        classes.take(compiled(HEAD.formatted(2)));
        Map<String, byte[]> both = compiled(HEAD.formatted(2), ONE);
        both.remove("REPL.$JShell$1");
        classes.take(both);
        assertThat(call("REPL.$JShell$2", "one")).isEqualTo(3.0);
    }

    @Test
    void nestedClassesAndRecordsAndLambdasGoWithTheirSnippet() throws Exception {
        String source = "class $JShell$4 { %s record Wheel(long mm, double bar) {}"
                + " static class Hub { private int holes = 32; }"
                + " public static String told() { java.util.function.Supplier<String> s ="
                + " () -> new Wheel(1L << 40, 6.5) + \" \" + new Hub().holes; return s.get(); } }";
        classes.take(compiled(source.formatted("")));
        classes.take(compiled(source.formatted("public static int other = 1;")));
        assertThat(call("REPL.$JShell$4v2", "told")).isEqualTo("Wheel[mm=1099511627776, bar=6.5] 32");
        assertThat(classes.all()).containsKeys("REPL.$JShell$4v2$Wheel", "REPL.$JShell$4v2$Hub");
    }

    @Test
    void whatIsThrownIsToldWithoutTheClassesThatHoldSnippets() {
        assertThat(SnippetClasses.expunged("Cannot read the array length because \"REPL.$JShell$12v3.a\" is null"))
                .isEqualTo("Cannot read the array length because \"a\" is null");
        assertThat(SnippetClasses.expunged("REPL.$JShell$12$Worn")).isEqualTo("Worn");
    }

    private Object call(String className, String method) throws ReflectiveOperationException {
        SnippetLoader loader = new SnippetLoader();
        classes.all().forEach(loader::add);
        var found = loader.loadClass(className).getDeclaredMethod(method);
        found.setAccessible(true);
        return found.invoke(null);
    }

    /** Classes of the package of snippets, by name. */
    private Map<String, byte[]> compiled(String... sources) throws IOException {
        Path out = Files.createTempDirectory(folder, "out");
        Path source = out.resolve("Page.java");
        Files.writeString(source, "package REPL;\n" + String.join("\n", sources));
        int status =
                ToolProvider.getSystemJavaCompiler().run(null, null, null, "-d", out.toString(), source.toString());
        assertThat(status).isZero();
        Map<String, byte[]> compiled = new TreeMap<>();
        try (Stream<Path> files = Files.list(out.resolve("REPL"))) {
            files.forEach(
                    file -> compiled.put("REPL." + file.getFileName().toString().replace(".class", ""), bytes(file)));
        }
        return compiled;
    }

    private static byte[] bytes(Path file) {
        try {
            return Files.readAllBytes(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
