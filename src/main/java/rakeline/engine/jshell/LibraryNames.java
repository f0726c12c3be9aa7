package rakeline.engine.jshell;

import java.lang.reflect.Field;
import java.lang.reflect.Method;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import rakeline.prelude.Prelude;
import rakeline.prelude.Surroundings;

/** Names that a row may take from the library, or from Java, which change nothing that another row could see. */
final class LibraryNames {
    private static final List<String> PACKAGES = List.of(
            "rakeline.quantity.",
            "rakeline.geometry.",
            "rakeline.geometry.parts.",
            "rakeline.rider.",
            "rakeline.handling.",
            "rakeline.study.",
            "rakeline.figure.",
            "rakeline.prelude.");

    /** Of Java, what neither is changed by its static methods nor reads what could be. */
    private static final Set<String> OF_JAVA = Set.of(
            "Arrays",
            "Boolean",
            "Collectors",
            "Comparator",
            "Double",
            "DoubleStream",
            "IntStream",
            "Integer",
            "List",
            "Map",
            "Math",
            "Object",
            "Optional",
            "Set",
            "Stream",
            "var");

    private static final Set<String> BARE = bare();

    private final Map<String, Boolean> types = new HashMap<>();

    /** Whether a name, methods with {@code ()} after it, is one of them. */
    boolean has(String name) {
        return BARE.contains(name) || OF_JAVA.contains(name) || types.computeIfAbsent(name, LibraryNames::isType);
    }

    private static Set<String> bare() {
        Set<String> names = new HashSet<>();
        Stream.concat(Prelude.FACADES.stream(), Stream.of(Math.class))
                .flatMap(type -> Stream.of(type.getMethods()))
                .map(Method::getName)
                .forEach(method -> names.add(method + "()"));
        Prelude.CONSTANTS.stream()
                .flatMap(type -> Stream.of(type.getFields()))
                .map(Field::getName)
                .forEach(names::add);
        names.remove("random()");
        return Set.copyOf(names);
    }

    private static boolean isType(String name) {
        return !name.equals(Surroundings.class.getSimpleName())
                && PACKAGES.stream().anyMatch(folder -> exists(folder + name));
    }

    private static boolean exists(String type) {
        try {
            Class.forName(type, false, LibraryNames.class.getClassLoader());
            return true;
        } catch (ClassNotFoundException | LinkageError e) {
            return false;
        }
    }
}
