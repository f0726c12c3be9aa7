package rakeline.engine.jshell;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * A small part of Java with a meaning of its own, that shares nothing with the compiler: what rows are made of in
 * proofs. A phrase knows how it is written and what it does.
 */
final class Small {
    /** What a value is; {@code NONE} is that of a statement. */
    enum Sort {
        INT("int"),
        DOUBLE("double"),
        TEXT("String"),
        TRUTH("boolean"),
        LIST("List<Integer>"),
        FUNCTION("Runnable"),
        NONE("void");

        private final String java;

        Sort(String java) {
            this.java = java;
        }

        String java() {
            return java;
        }

        boolean isNumber() {
            return this == INT || this == DOUBLE;
        }

        /** Whether Java takes a value of another type for one of this. */
        boolean takes(Sort other) {
            return this == other || (this == DOUBLE && other == INT);
        }

        /** A value of a type that this one takes, as one of this. */
        Object converted(Object value) {
            return this == DOUBLE && value instanceof Integer number ? (Object) number.doubleValue() : value;
        }

        /** What a compound assignment makes of a number. */
        Object narrowed(Object value) {
            return this == INT ? (Object) ((Number) value).intValue() : converted(value);
        }
    }

    /** Java does not accept this. */
    static final class Unacceptable extends RuntimeException {
        private static final long serialVersionUID = 1L;

        Unacceptable(String why) {
            super(why);
        }
    }

    /** What runs is stopped, since it does not end. */
    static final class Stopped extends RuntimeException {
        private static final long serialVersionUID = 1L;
    }

    /** Where a compiled name keeps its value: another one for every declaration that is compiled. */
    static final class Slot {
        private final Sort type;

        Slot(Sort type) {
            this.type = type;
        }

        Sort type() {
            return type;
        }
    }

    /** A worker's memory, and what a row has printed. */
    static final class Machine {
        private final Map<Slot, Object> memory = new HashMap<>();
        private final WorkerSurroundings surroundings = new WorkerSurroundings();
        private StringBuilder printed = new StringBuilder();

        void beginRow() {
            printed = new StringBuilder();
        }

        String printed() {
            return printed.toString();
        }

        void print(Object value) {
            printed.append(value).append('\n');
        }

        WorkerSurroundings surroundings() {
            return surroundings;
        }

        Object get(Slot slot) {
            return memory.getOrDefault(slot, slot.type() == Sort.DOUBLE ? (Object) 0.0 : (Object) 0);
        }

        void put(Slot slot, Object value) {
            memory.put(slot, value);
        }
    }

    /** A compiled phrase. */
    interface Code {
        Object run(Machine machine);
    }

    /** A compiled phrase and the type of its value. */
    record Typed(Sort type, Code code) {}

    /** A method as compiled: the place of its parameter, and its body. */
    record Function1(Slot parameter, Typed body) {}

    /** The names in force where something is compiled; each declaration of the page counts until it is taken away. */
    static final class Scope {
        private final Map<String, List<Slot>> variables = new HashMap<>();
        private final Map<String, List<Function1>> methods = new HashMap<>();

        Scope within(String name, Slot slot) {
            Scope inner = new Scope();
            variables.forEach((key, slots) -> inner.variables.put(key, new ArrayList<>(slots)));
            inner.methods.putAll(methods);
            inner.declare(name, slot);
            return inner;
        }

        void declare(String name, Slot slot) {
            variables.computeIfAbsent(name, any -> new ArrayList<>()).add(slot);
        }

        void declare(String name, Function1 method) {
            methods.computeIfAbsent(name, any -> new ArrayList<>()).add(method);
        }

        void remove(Slot slot) {
            variables.values().forEach(slots -> slots.remove(slot));
        }

        void remove(Function1 method) {
            methods.values().forEach(found -> found.remove(method));
        }

        Slot variable(String name) {
            List<Slot> found = variables.getOrDefault(name, List.of());
            if (found.isEmpty()) {
                throw new Unacceptable("nothing is called " + name);
            }
            return found.get(found.size() - 1);
        }

        /** The method that Java takes for an argument: the one of its type, else one that takes it. */
        Function1 method(String name, Sort argument) {
            List<Function1> found = methods.getOrDefault(name, List.of());
            return found.stream()
                    .filter(each -> each.parameter().type() == argument)
                    .findFirst()
                    .or(() -> found.stream()
                            .filter(each -> each.parameter().type().takes(argument))
                            .findFirst())
                    .orElseThrow(() -> new Unacceptable("no " + name + " takes a " + argument.java()));
        }
    }

    /** Something that has a value, as written and as it is compiled. */
    record Phrase(String java, Function<Scope, Typed> meaning) {
        Typed compiled(Scope scope) {
            return meaning.apply(scope);
        }
    }

    /** What compiling a snippet brings: its code, and the name that it declares. */
    record Compiled(Typed typed, String name, Optional<Slot> variable, Optional<Function1> method) {
        static Compiled of(Typed typed) {
            return new Compiled(typed, "", Optional.empty(), Optional.empty());
        }
    }

    /** One snippet of a row. */
    record Piece(String java, Function<Scope, Compiled> meaning) {
        Compiled compiled(Scope scope) {
            return meaning.apply(scope);
        }
    }

    /** A row as written, and its snippets. */
    record Text(String java, List<Piece> pieces) {
        static Text of(List<Piece> pieces) {
            return new Text(String.join("\n", pieces.stream().map(Piece::java).toList()), List.copyOf(pieces));
        }
    }

    private Small() {}
}
