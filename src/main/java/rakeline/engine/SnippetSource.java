package rakeline.engine;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * One piece of Java in a row, as its source tells without running it.
 *
 * @param offset where it starts in the row's text
 * @param uses the names that it takes from outside itself, bodies included; methods end in {@code ()}
 * @param assigns the variables outside itself that it assigns
 * @param control the dial or picker that it declares
 * @param fault why it must not run
 * @param parsed false: it is no Java, and running it tells what is wrong
 */
public record SnippetSource(
        int offset,
        String text,
        List<Definition> defines,
        Set<String> uses,
        Set<String> assigns,
        Optional<Declared> control,
        Optional<Fault> fault,
        boolean parsed) {

    /** A dial or picker as written: its ends where they are plain numbers and no bike can widen them, else NaN. */
    public record Declared(String name, boolean isDial, double min, double max) {}

    /** Something wrong at a place of the row, lines and columns counted from 1. */
    public record Fault(int line, int column, String sentence) {}

    public SnippetSource {
        defines = List.copyOf(defines);
        uses = Set.copyOf(new LinkedHashSet<>(uses));
        assigns = Set.copyOf(assigns);
    }

    public boolean isDeferred() {
        return defines.stream().anyMatch(Definition::isDeferred);
    }

    public boolean isImport() {
        return defines.stream().anyMatch(definition -> definition.kind() == Definition.Kind.IMPORT);
    }
}
