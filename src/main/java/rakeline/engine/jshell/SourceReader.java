package rakeline.engine.jshell;

import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.util.JavacTask;
import com.sun.source.util.SourcePositions;
import com.sun.source.util.Trees;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.net.URI;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import javax.tools.Diagnostic;
import javax.tools.JavaCompiler;
import javax.tools.JavaFileObject;
import javax.tools.SimpleJavaFileObject;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;
import jdk.jshell.SourceCodeAnalysis;
import rakeline.engine.RowSource;
import rakeline.engine.SnippetSource;

/** Takes a row's text apart into snippets, and tells from the parse of each what it defines and uses. */
final class SourceReader {
    /** A piece of the row's text. */
    private record Piece(int offset, String text) {}

    private static final List<String> OPTIONS = List.of("-proc:none", "-Xlint:none", "-Xmaxerrs", "1000000");

    private final SourceCodeAnalysis splitter;
    private final JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
    private final StandardJavaFileManager files;

    SourceReader(SourceCodeAnalysis splitter) {
        this.splitter = splitter;
        this.files = compiler.getStandardFileManager(null, Locale.ROOT, null);
    }

    RowSource read(String text) {
        List<Piece> pieces = split(text);
        if (pieces.isEmpty()) {
            return new RowSource(text, List.of());
        }
        List<Wrapped> tried = new ArrayList<>();
        for (int i = 0; i < pieces.size(); i++) {
            for (Wrapping wrapping : Wrapping.values()) {
                tried.add(new Wrapped(wrapping, pieces.get(i)));
            }
        }
        Set<String> broken = new HashSet<>();
        JavacTask task = (JavacTask)
                compiler.getTask(new StringWriter(), files, error -> note(error, broken), OPTIONS, null, tried);
        List<CompilationUnitTree> units = parse(task);
        SourcePositions positions = Trees.instance(task).getSourcePositions();
        List<SnippetSource> snippets = new ArrayList<>();
        for (int i = 0; i < pieces.size(); i++) {
            int first = i * Wrapping.values().length;
            snippets.add(IntStream.range(first, first + Wrapping.values().length)
                    .filter(at -> !broken.contains(tried.get(at).getName()))
                    .mapToObj(at -> new SnippetReader(text, tried.get(at), units.get(at), positions).read())
                    .findFirst()
                    .orElseGet(() -> unparsed(tried.get(first))));
        }
        return new RowSource(text, snippets);
    }

    private List<Piece> split(String text) {
        List<Piece> pieces = new ArrayList<>();
        String rest = text;
        while (!rest.isBlank()) {
            SourceCodeAnalysis.CompletionInfo info = splitter.analyzeCompletion(rest);
            if (info.completeness() == SourceCodeAnalysis.Completeness.EMPTY) {
                break;
            }
            boolean complete = info.completeness().isComplete();
            pieces.add(new Piece(text.length() - rest.length(), complete ? info.source() : rest));
            rest = complete ? info.remaining() : "";
        }
        return pieces;
    }

    private static List<CompilationUnitTree> parse(JavacTask task) {
        try {
            List<CompilationUnitTree> units = new ArrayList<>();
            task.parse().forEach(units::add);
            return units;
        } catch (IOException e) {
            throw new UncheckedIOException("Source held in memory cannot be read.", e);
        }
    }

    private static void note(Diagnostic<? extends JavaFileObject> error, Set<String> broken) {
        if (error.getKind() == Diagnostic.Kind.ERROR && error.getSource() != null) {
            broken.add(error.getSource().getName());
        }
    }

    /** What does not parse defines and uses nothing; running it tells what is wrong. */
    private static SnippetSource unparsed(Wrapped piece) {
        return new SnippetSource(
                piece.offset(), piece.text(), List.of(), Set.of(), Set.of(), Optional.empty(), Optional.empty(), false);
    }

    /** What is put around a snippet so that it can be parsed, in the order in which it is tried. */
    enum Wrapping {
        STATEMENT("class $ { void $() throws Throwable { ", "\n} }"),
        EXPRESSION("class $ { Object $ = ", "\n; }"),
        MEMBER("class $ { ", "\n}"),
        IMPORT("", "");

        private final String before;
        private final String after;

        Wrapping(String before, String after) {
            this.before = before;
            this.after = after;
        }

        String around(String text) {
            return before + text + after;
        }

        int shift() {
            return before.length();
        }
    }

    /** A snippet in a wrapping, as a source file held in memory. */
    static final class Wrapped extends SimpleJavaFileObject {
        private final Wrapping wrapping;
        private final Piece piece;

        private Wrapped(Wrapping wrapping, Piece piece) {
            super(URI.create("row:///" + wrapping + piece.offset() + ".java"), Kind.SOURCE);
            this.wrapping = wrapping;
            this.piece = piece;
        }

        Wrapping wrapping() {
            return wrapping;
        }

        int offset() {
            return piece.offset();
        }

        String text() {
            return piece.text();
        }

        @Override
        public CharSequence getCharContent(boolean ignoreEncodingErrors) {
            return wrapping.around(wrapping == Wrapping.EXPRESSION ? withoutEnd(text()) : text());
        }

        private static String withoutEnd(String text) {
            return text.stripTrailing().replaceFirst(";$", "");
        }
    }
}
