package rakeline.engine;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A row's text taken apart into snippets, and what these say together. */
public final class RowSource {
    private final String text;
    private final List<SnippetSource> snippets;
    private final List<Definition> defines;
    private final Set<String> uses;
    private final Set<String> assigns;
    private final boolean hasImport;

    public RowSource(String text, List<SnippetSource> snippets) {
        this.text = text;
        this.snippets = List.copyOf(snippets);
        defines =
                snippets.stream().flatMap(snippet -> snippet.defines().stream()).toList();
        uses = together(snippets.stream().map(SnippetSource::uses));
        assigns = together(snippets.stream().map(SnippetSource::assigns));
        hasImport = snippets.stream().anyMatch(SnippetSource::isImport);
    }

    public String text() {
        return text;
    }

    public List<SnippetSource> snippets() {
        return snippets;
    }

    public List<Definition> defines() {
        return defines;
    }

    public Set<String> uses() {
        return uses;
    }

    public Set<String> assigns() {
        return assigns;
    }

    public boolean hasImport() {
        return hasImport;
    }

    public boolean keepsState() {
        return defines.stream().anyMatch(Definition::keepsState);
    }

    public Optional<SnippetSource.Fault> fault() {
        return snippets.stream().flatMap(snippet -> snippet.fault().stream()).findFirst();
    }

    /** The line, counted from 1, of a place in the text. */
    public int lineAt(int offset) {
        return 1 + (int) upTo(offset).chars().filter(c -> c == '\n').count();
    }

    /** The column, counted from 1, of a place in the text. */
    public int columnAt(int offset) {
        return upTo(offset).length() - upTo(offset).lastIndexOf('\n');
    }

    private String upTo(int offset) {
        return text.substring(0, Math.max(0, Math.min(offset, text.length())));
    }

    private static Set<String> together(Stream<Set<String>> sets) {
        return sets.flatMap(Set::stream).collect(Collectors.toUnmodifiableSet());
    }
}
