package rakeline.engine.jshell;

import static rakeline.engine.jshell.Phrases.call;
import static rakeline.engine.jshell.Phrases.first;
import static rakeline.engine.jshell.Phrases.hiding;
import static rakeline.engine.jshell.Phrases.minus;
import static rakeline.engine.jshell.Phrases.name;
import static rakeline.engine.jshell.Phrases.number;
import static rakeline.engine.jshell.Phrases.over;
import static rakeline.engine.jshell.Phrases.plus;
import static rakeline.engine.jshell.Phrases.real;
import static rakeline.engine.jshell.Phrases.size;
import static rakeline.engine.jshell.Phrases.text;
import static rakeline.engine.jshell.Pieces.add;
import static rakeline.engine.jshell.Pieces.append;
import static rakeline.engine.jshell.Pieces.assign;
import static rakeline.engine.jshell.Pieces.clear;
import static rakeline.engine.jshell.Pieces.counting;
import static rakeline.engine.jshell.Pieces.dial;
import static rakeline.engine.jshell.Pieces.fixedList;
import static rakeline.engine.jshell.Pieces.function;
import static rakeline.engine.jshell.Pieces.hidingBlock;
import static rakeline.engine.jshell.Pieces.imported;
import static rakeline.engine.jshell.Pieces.inferred;
import static rakeline.engine.jshell.Pieces.loop;
import static rakeline.engine.jshell.Pieces.method;
import static rakeline.engine.jshell.Pieces.newList;
import static rakeline.engine.jshell.Pieces.print;
import static rakeline.engine.jshell.Pieces.run;
import static rakeline.engine.jshell.Pieces.show;
import static rakeline.engine.jshell.Pieces.variable;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import rakeline.engine.jshell.Small.Phrase;
import rakeline.engine.jshell.Small.Piece;
import rakeline.engine.jshell.Small.Sort;
import rakeline.engine.jshell.Small.Text;

/**
 * Writes rows of the small language. Rows come in kinds, which in their order make a page that mostly runs: numbers,
 * dials, lists and their aliases, methods, functions and classes, and what changes them, hides them, shows them.
 */
final class Author {
    /** So many kinds of rows there are. */
    static final int KINDS = 20;

    private static final List<Sort> TYPES = List.of(Sort.INT, Sort.INT, Sort.DOUBLE, Sort.TEXT);
    private static final List<String> NUMBERS = List.of("a", "b", "c", "d");

    private final Random random;

    Author(Random random) {
        this.random = random;
    }

    /** A row of a kind; now and then one of several snippets, or of another kind. */
    Text row(int kind) {
        List<Piece> pieces = new ArrayList<>();
        if (chance(8)) {
            pieces.add(change());
        }
        pieces.add(piece(chance(30) ? random.nextInt(KINDS) : kind));
        if (chance(5)) {
            pieces.add(chance(2) ? change() : show(value(1)));
        }
        return Text.of(pieces);
    }

    private Piece piece(int kind) {
        return switch (kind) {
            case 0 -> imported(oneOf("java.time.Duration", "java.time.*"));
            case 1 -> numeric("a");
            case 2 ->
                chance(6) ? numeric("d") : dial("d", random.nextInt(3), 5 + random.nextInt(5), 3 + random.nextInt(3));
            case 3 -> numeric("b");
            case 4 -> list("xs");
            case 5, 11 -> change();
            case 6 -> alias();
            case 7 -> counting("Bin");
            case 8, 9 -> methodLike();
            case 10 -> numeric("c");
            case 12 -> function("go", chance(4) ? append("ys", number(7)) : changeOfNumber());
            case 13 -> run("go");
            case 14 -> loop(1 + random.nextInt(3), changing());
            case 15 -> hidingBlock(oneOf("a", "b"), changing());
            case 16 -> print(value(2));
            case 17 -> show(hiding(oneOf("a", "b", "z"), plus(name("a"), whole())));
            case 18 -> show(plus(text("so "), plus(name("b"), plus(text(" "), name(oneOf("xs", "ys"))))));
            default -> show(chance(4) ? Phrases.duration(whole()) : value(2));
        };
    }

    private Piece numeric(String name) {
        if (chance(12)) {
            return variable(Sort.INT, name, over(number(1), number(0)));
        }
        if (chance(12)) {
            return variable(Sort.INT, name, plus(name("missing"), number(1)));
        }
        Sort type = oneOf(TYPES);
        if (chance(5)) {
            return inferred(name, value(1));
        }
        return variable(type, name, type == Sort.TEXT ? plus(text("t"), value(0)) : start(type));
    }

    private Phrase start(Sort type) {
        return chance(3) ? value(1) : type == Sort.INT ? number(random.nextInt(9)) : real(random.nextInt(90) / 4.0);
    }

    private Piece list(String name) {
        return chance(6)
                ? variable(Sort.LIST, name, fixedList(random.nextInt(9)))
                : variable(
                        Sort.LIST,
                        name,
                        newList(random.ints(1 + random.nextInt(2), 0, 9).toArray()));
    }

    private Piece alias() {
        return chance(3) ? variable(Sort.LIST, "ys", Pieces.copyOf("xs")) : inferred("ys", name("xs"));
    }

    private Piece methodLike() {
        Sort type = oneOf(Sort.INT, Sort.DOUBLE, Sort.TEXT);
        Optional<Phrase> first = chance(3) ? Optional.of(changing()) : Optional.empty();
        Phrase value = chance(4) ? name("x") : plus(name("x"), chance(2) ? name(oneOf("a", "b")) : number(2));
        return method(chance(4) ? Sort.INT : type, oneOf("f", "f", "g"), type, first, value);
    }

    private Piece change() {
        return chance(8) ? clear(oneOf("xs", "ys")) : show(changing());
    }

    private Phrase changing() {
        return chance(2) ? append(oneOf("xs", "ys"), whole()) : changeOfNumber();
    }

    private Phrase changeOfNumber() {
        return switch (random.nextInt(5)) {
            case 0 -> assign(oneOf("a", "b"), whole());
            case 1 -> add("Bin.count", number(1));
            default -> add(oneOf("a", "b", "c"), chance(3) ? real(0.5) : whole());
        };
    }

    private Phrase whole() {
        return switch (random.nextInt(4)) {
            case 0 -> size(oneOf("xs", "ys"));
            case 1 -> name(oneOf("a", "b"));
            default -> number(random.nextInt(9));
        };
    }

    private Phrase value(int depth) {
        if (depth > 0 && chance(2)) {
            return plus(value(depth - 1), value(depth - 1));
        }
        return switch (random.nextInt(12)) {
            case 0 -> size(oneOf("xs", "ys"));
            case 1 -> first(oneOf("xs", "ys"));
            case 2, 3 -> call(oneOf("f", "g"), name(oneOf(NUMBERS)));
            case 4 -> name("Bin.count");
            case 5 -> minus(name(oneOf(NUMBERS)), number(3));
            case 6 -> over(whole(), whole());
            case 7 -> text("w");
            case 8 -> number(random.nextInt(9));
            default -> name(oneOf(NUMBERS));
        };
    }

    private boolean chance(int oneIn) {
        return random.nextInt(oneIn) == 0;
    }

    @SafeVarargs
    private final <T> T oneOf(T... choices) {
        return choices[random.nextInt(choices.length)];
    }

    private <T> T oneOf(List<T> choices) {
        return choices.get(random.nextInt(choices.size()));
    }
}
