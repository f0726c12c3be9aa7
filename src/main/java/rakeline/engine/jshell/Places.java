package rakeline.engine.jshell;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import jdk.jshell.Snippet;
import jdk.jshell.SourceCodeAnalysis;
import rakeline.engine.RowSource;

/** Where the lines of compiled snippets stand in their rows. */
final class Places {
    /** A line of a row, counted from 1. */
    record Spot(String rowId, int line) {}

    /** A snippet and where it starts in its row. */
    private record Part(String rowId, RowSource source, Snippet snippet, int offset) {}

    private static final Pattern BLANK = Pattern.compile("(?:\\s|//[^\\n]*\\n|/\\*.*?\\*/)*+", Pattern.DOTALL);

    private final SourceCodeAnalysis analysis;
    private final UnaryOperator<String> names;
    private final Map<String, List<Part>> parts = new HashMap<>();

    /** @param names the name in the worker of a class that JShell named */
    Places(SourceCodeAnalysis analysis, UnaryOperator<String> names) {
        this.analysis = analysis;
        this.names = names;
    }

    void add(String rowId, RowSource source, Snippet snippet, int offset) {
        parts.computeIfAbsent(rowId, any -> new ArrayList<>()).add(new Part(rowId, source, snippet, offset));
    }

    /** A row's snippets. */
    List<Snippet> of(String rowId) {
        return parts.getOrDefault(rowId, List.of()).stream().map(Part::snippet).toList();
    }

    /** What a row that has snippets was read as. */
    RowSource sourceOf(String rowId) {
        return parts.get(rowId).get(0).source();
    }

    /** Takes a row's snippets away, and returns them. */
    List<Snippet> remove(String rowId) {
        List<Snippet> removed = of(rowId);
        parts.remove(rowId);
        return removed;
    }

    /** The class that holds a snippet, by its name in the worker. */
    String classOf(Snippet snippet) {
        return names.apply(compiledClassOf(snippet));
    }

    /** The class that holds a snippet, as JShell calls it. */
    String compiledClassOf(Snippet snippet) {
        return analysis.wrapper(snippet).fullClassName();
    }

    /** A snippet with what JShell puts around it. */
    String wrapped(Snippet snippet) {
        return analysis.wrapper(snippet).wrapped();
    }

    /** The innermost of the places that lies in the row, else the innermost of all. */
    Optional<Spot> find(List<Answer.Place> places, String preferredRow) {
        List<Spot> spots = places.stream().flatMap(this::find).toList();
        return spots.stream()
                .filter(spot -> spot.rowId().equals(preferredRow))
                .findFirst()
                .or(() -> spots.stream().findFirst());
    }

    private Stream<Spot> find(Answer.Place place) {
        return parts.values().stream()
                .flatMap(List::stream)
                .filter(part -> classOf(part.snippet()).equals(place.className()))
                .map(part -> new Spot(part.rowId(), line(part, place.line())))
                .limit(1);
    }

    /** What JShell adds to a line of the snippet maps to its start: the furthest place of the line is the snippet's. */
    private int line(Part part, int wrappedLine) {
        SourceCodeAnalysis.SnippetWrapper wrapper = analysis.wrapper(part.snippet());
        int start = startOfLine(wrapper.wrapped(), wrappedLine);
        int end = startOfLine(wrapper.wrapped(), wrappedLine + 1);
        int place = IntStream.range(start, Math.max(start + 1, end - 1))
                .map(wrapper::wrappedToSourcePosition)
                .max()
                .orElse(0);
        int at = part.offset() + place;
        return part.source().lineAt(place == 0 ? begun(part.source().text(), at) : at);
    }

    /** The first place from there on that is neither blank nor in a comment. */
    private static int begun(String text, int place) {
        Matcher blank = BLANK.matcher(text).region(Math.min(place, text.length()), text.length());
        return blank.lookingAt() ? blank.end() : place;
    }

    private static int startOfLine(String text, int line) {
        int at = 0;
        for (int i = 1; i < line && at >= 0; i++) {
            at = text.indexOf('\n', at) + 1;
        }
        return at;
    }
}
