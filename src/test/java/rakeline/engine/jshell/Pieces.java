package rakeline.engine.jshell;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import rakeline.engine.jshell.Small.Compiled;
import rakeline.engine.jshell.Small.Function1;
import rakeline.engine.jshell.Small.Phrase;
import rakeline.engine.jshell.Small.Piece;
import rakeline.engine.jshell.Small.Scope;
import rakeline.engine.jshell.Small.Slot;
import rakeline.engine.jshell.Small.Sort;
import rakeline.engine.jshell.Small.Typed;
import rakeline.prelude.DialRequest;

/** The snippets of the small language. */
final class Pieces {
    private Pieces() {}

    /** An expression whose value the row shows. */
    static Piece show(Phrase phrase) {
        return new Piece(phrase.java() + ";", scope -> Compiled.of(phrase.compiled(scope)));
    }

    static Piece variable(Sort type, String name, Phrase initial) {
        return new Piece(
                type.java() + " " + name + " = " + initial.java() + ";",
                scope -> declared(type, name, initial.compiled(scope)));
    }

    /** A variable of whatever type its first value has. */
    static Piece inferred(String name, Phrase initial) {
        return new Piece("var " + name + " = " + initial.java() + ";", scope -> {
            Typed first = initial.compiled(scope);
            return declared(first.type(), name, first);
        });
    }

    private static Compiled declared(Sort type, String name, Typed initial) {
        Phrases.require(type.takes(initial.type()), "a value of another type is needed");
        Slot slot = new Slot(type);
        Typed code = new Typed(type, machine -> {
            machine.put(slot, type.converted(initial.code().run(machine)));
            return machine.get(slot);
        });
        return new Compiled(code, name, Optional.of(slot), Optional.empty());
    }

    static Piece dial(String name, int min, int max, int initial) {
        String java = "double " + name + " = dial(\"Dial\", \"mm\", " + min + ", " + max + ", 1, " + initial + ");";
        DialRequest asked = new DialRequest("Dial", "", "mm", min, max, 1, initial, Double.NaN, 0, List.of());
        return new Piece(
                java,
                scope -> declared(Sort.DOUBLE, name, new Typed(Sort.DOUBLE, machine -> {
                    machine.surroundings().declaring(name);
                    return machine.surroundings().dial(asked);
                })));
    }

    static Phrase newList(int... values) {
        String java = "new ArrayList<>(List.of("
                + String.join(
                        ", ", IntStream.of(values).mapToObj(Integer::toString).toList()) + "))";
        return new Phrase(
                java,
                scope -> new Typed(
                        Sort.LIST,
                        machine -> new ArrayList<>(IntStream.of(values).boxed().toList())));
    }

    static Phrase fixedList(int value) {
        return new Phrase("List.of(" + value + ")", scope -> new Typed(Sort.LIST, machine -> List.of(value)));
    }

    static Phrase copyOf(String list) {
        return new Phrase("new ArrayList<>(" + list + ")", scope -> {
            Slot slot = Phrases.list(scope, list);
            return new Typed(Sort.LIST, machine -> new ArrayList<>(Phrases.values(machine.get(slot))));
        });
    }

    /** {@code name = value}; an expression, whose value the row shows. */
    static Phrase assign(String name, Phrase value) {
        return new Phrase(name + " = " + value.java(), scope -> {
            Slot slot = scope.variable(name);
            Typed given = value.compiled(scope);
            Phrases.require(slot.type().takes(given.type()), "a value of another type is needed");
            return new Typed(slot.type(), machine -> {
                machine.put(slot, slot.type().converted(given.code().run(machine)));
                return machine.get(slot);
            });
        });
    }

    /** {@code name += value}. */
    static Phrase add(String name, Phrase value) {
        return new Phrase(name + " += " + value.java(), scope -> {
            Slot slot = scope.variable(name);
            Typed sum = Phrases.plus(Phrases.name(name), value).compiled(scope);
            boolean words = slot.type() == Sort.TEXT;
            Phrases.require(words || sum.type().isNumber(), "these values cannot be combined so");
            return new Typed(slot.type(), machine -> {
                Object found = sum.code().run(machine);
                machine.put(slot, words ? found : slot.type().narrowed(found));
                return machine.get(slot);
            });
        });
    }

    /** {@code list.add(value)}. */
    static Phrase append(String list, Phrase value) {
        return new Phrase(list + ".add(" + value.java() + ")", scope -> {
            Slot slot = Phrases.list(scope, list);
            Typed given = value.compiled(scope);
            Phrases.require(given.type() == Sort.INT, "a whole number is needed");
            return new Typed(Sort.TRUTH, machine -> {
                List<Integer> values = Phrases.values(machine.get(slot));
                return values.add((Integer) given.code().run(machine));
            });
        });
    }

    static Piece clear(String list) {
        return new Piece(list + ".clear();", scope -> {
            Slot slot = Phrases.list(scope, list);
            return Compiled.of(
                    nothing(machine -> Phrases.values(machine.get(slot)).clear()));
        });
    }

    static Piece print(Phrase value) {
        return new Piece("System.out.println(" + value.java() + ");", scope -> {
            Typed given = value.compiled(scope);
            return Compiled.of(nothing(machine -> machine.print(given.code().run(machine))));
        });
    }

    static Piece loop(int times, Phrase body) {
        String java = "for (int i = 0; i < " + times + "; i++) { " + body.java() + "; }";
        return new Piece(java, scope -> {
            Typed inner = body.compiled(scope);
            return Compiled.of(nothing(machine ->
                    IntStream.range(0, times).forEach(i -> inner.code().run(machine))));
        });
    }

    /** A block with a variable of its own that hides one of the page. */
    static Piece hidingBlock(String name, Phrase body) {
        return new Piece("{ int " + name + " = 5; " + body.java() + "; }", scope -> {
            Slot local = new Slot(Sort.INT);
            Typed inner = body.compiled(scope.within(name, local));
            return Compiled.of(nothing(machine -> {
                machine.put(local, 5);
                inner.code().run(machine);
            }));
        });
    }

    /** A method of one parameter {@code x} that does something and returns a value. */
    static Piece method(Sort returned, String name, Sort parameter, Optional<Phrase> first, Phrase value) {
        String does = first.map(phrase -> phrase.java() + "; ").orElse("");
        String java = returned.java() + " " + name + "(" + parameter.java() + " x) { " + does + "return " + value.java()
                + "; }";
        return new Piece(java, scope -> {
            Slot slot = new Slot(parameter);
            Typed body = body(returned, scope.within("x", slot), first, value);
            Typed none = new Typed(Sort.NONE, machine -> null);
            return new Compiled(none, name, Optional.empty(), Optional.of(new Function1(slot, body)));
        });
    }

    private static Typed body(Sort returned, Scope scope, Optional<Phrase> first, Phrase value) {
        Optional<Typed> before = first.map(phrase -> phrase.compiled(scope));
        Typed last = value.compiled(scope);
        Phrases.require(returned.takes(last.type()), "a value of another type is needed");
        return new Typed(returned, machine -> {
            before.ifPresent(typed -> typed.code().run(machine));
            return returned.converted(last.code().run(machine));
        });
    }

    static Piece function(String name, Phrase body) {
        return new Piece("Runnable " + name + " = () -> " + body.java() + ";", scope -> {
            Typed inner = body.compiled(scope);
            Typed made = new Typed(
                    Sort.FUNCTION, machine -> (Runnable) () -> inner.code().run(machine));
            return declared(Sort.FUNCTION, name, made);
        });
    }

    static Piece run(String function) {
        return new Piece(function + ".run();", scope -> {
            Slot slot = scope.variable(function);
            Phrases.require(slot.type() == Sort.FUNCTION, function + " is no function");
            return Compiled.of(nothing(machine -> ((Runnable) machine.get(slot)).run()));
        });
    }

    /** A class with a static field {@code count}, which is 0 in a worker that has not used it. */
    static Piece counting(String name) {
        return new Piece(
                "class " + name + " { static int count; }",
                scope -> new Compiled(
                        nothing(machine -> {}), name + ".count", Optional.of(new Slot(Sort.INT)), Optional.empty()));
    }

    /** An import that brings {@code Duration}. */
    static Piece imported(String java) {
        return new Piece(
                "import " + java + ";",
                scope -> new Compiled(
                        nothing(machine -> {}), "Duration", Optional.of(new Slot(Sort.NONE)), Optional.empty()));
    }

    /** What never ends by itself, and is stopped. */
    static Piece endless() {
        return new Piece(
                "while (true) { Thread.onSpinWait(); }",
                scope -> Compiled.of(nothing(machine -> {
                    throw new Small.Stopped();
                })));
    }

    /** Calls a port, says which process it is, and never ends. */
    static Piece latch(int port) {
        Piece endless = endless();
        return new Piece(
                "{ var socket = new java.net.Socket(\"127.0.0.1\", " + port + ");"
                        + " new java.io.DataOutputStream(socket.getOutputStream())"
                        + ".writeLong(ProcessHandle.current().pid());"
                        + " socket.close(); while (true) { Thread.onSpinWait(); } }",
                endless.meaning());
    }

    private interface Doing {
        void go(Small.Machine machine);
    }

    private static Typed nothing(Doing doing) {
        return new Typed(Sort.NONE, machine -> {
            doing.go(machine);
            return null;
        });
    }
}
