package rakeline.engine.jshell;

import java.util.List;
import java.util.function.IntBinaryOperator;
import rakeline.engine.jshell.Small.Phrase;
import rakeline.engine.jshell.Small.Slot;
import rakeline.engine.jshell.Small.Sort;
import rakeline.engine.jshell.Small.Typed;
import rakeline.engine.jshell.Small.Unacceptable;

/** The expressions of the small language. */
final class Phrases {
    private interface Reals {
        double apply(double left, double right);
    }

    private Phrases() {}

    static Phrase number(int value) {
        return new Phrase(Integer.toString(value), scope -> new Typed(Sort.INT, machine -> value));
    }

    static Phrase real(double value) {
        return new Phrase(Double.toString(value), scope -> new Typed(Sort.DOUBLE, machine -> value));
    }

    static Phrase text(String value) {
        return new Phrase("\"" + value + "\"", scope -> new Typed(Sort.TEXT, machine -> value));
    }

    /** A variable; a class's static field is written with the class before it. */
    static Phrase name(String name) {
        return new Phrase(name, scope -> {
            Slot slot = scope.variable(name);
            return new Typed(slot.type(), machine -> machine.get(slot));
        });
    }

    /** Words where one side is; else a sum. */
    static Phrase plus(Phrase left, Phrase right) {
        Phrase sum = arithmetic(left, "+", right, Integer::sum, Double::sum);
        return new Phrase(sum.java(), scope -> {
            Typed first = left.compiled(scope);
            Typed second = right.compiled(scope);
            boolean joins = first.type() == Sort.TEXT || second.type() == Sort.TEXT;
            return joins
                    ? new Typed(
                            Sort.TEXT,
                            at -> "" + first.code().run(at) + second.code().run(at))
                    : sum.compiled(scope);
        });
    }

    static Phrase minus(Phrase left, Phrase right) {
        return arithmetic(left, "-", right, (a, b) -> a - b, (a, b) -> a - b);
    }

    static Phrase over(Phrase left, Phrase right) {
        return arithmetic(left, "/", right, (a, b) -> a / b, (a, b) -> a / b);
    }

    private static Phrase arithmetic(Phrase left, String sign, Phrase right, IntBinaryOperator whole, Reals real) {
        return new Phrase("(" + left.java() + " " + sign + " " + right.java() + ")", scope -> {
            Typed first = left.compiled(scope);
            Typed second = right.compiled(scope);
            if (!first.type().isNumber() || !second.type().isNumber()) {
                throw new Unacceptable("these are not both numbers");
            }
            return first.type() == Sort.INT && second.type() == Sort.INT
                    ? wholes(first, second, whole)
                    : reals(first, second, real);
        });
    }

    private static Typed wholes(Typed first, Typed second, IntBinaryOperator operator) {
        return new Typed(Sort.INT, machine -> {
            int left = (Integer) first.code().run(machine);
            return operator.applyAsInt(left, (Integer) second.code().run(machine));
        });
    }

    private static Typed reals(Typed first, Typed second, Reals operator) {
        return new Typed(Sort.DOUBLE, machine -> {
            double left = ((Number) first.code().run(machine)).doubleValue();
            return operator.apply(left, ((Number) second.code().run(machine)).doubleValue());
        });
    }

    static Phrase call(String name, Phrase argument) {
        return new Phrase(name + "(" + argument.java() + ")", scope -> {
            Typed given = argument.compiled(scope);
            Small.Function1 method = scope.method(name, given.type());
            return new Typed(method.body().type(), machine -> {
                Object value = method.parameter().type().converted(given.code().run(machine));
                machine.put(method.parameter(), value);
                return method.body().code().run(machine);
            });
        });
    }

    static Phrase size(String list) {
        return ofList(list, ".size()", List::size);
    }

    static Phrase first(String list) {
        return ofList(list, ".get(0)", values -> values.get(0));
    }

    private interface OfList {
        int apply(List<Integer> values);
    }

    private static Phrase ofList(String list, String word, OfList operator) {
        return new Phrase(list + word, scope -> {
            Slot slot = list(scope, list);
            return new Typed(Sort.INT, machine -> operator.apply(values(machine.get(slot))));
        });
    }

    static Slot list(Small.Scope scope, String name) {
        Slot slot = scope.variable(name);
        if (slot.type() != Sort.LIST) {
            throw new Unacceptable(name + " is no list");
        }
        return slot;
    }

    @SuppressWarnings("unchecked") // a list holds whole numbers: adding anything else does not compile
    static List<Integer> values(Object list) {
        return (List<Integer>) list;
    }

    /** A sum over 1 to 3 in which a parameter hides a name of the page. */
    static Phrase hiding(String name, Phrase body) {
        String java = "IntStream.rangeClosed(1, 3).map(" + name + " -> " + body.java() + ").sum()";
        return new Phrase(java, scope -> {
            Slot parameter = new Slot(Sort.INT);
            Typed inner = body.compiled(scope.within(name, parameter));
            require(inner.type() == Sort.INT, "a whole number is needed");
            return new Typed(Sort.INT, machine -> sum(machine, parameter, inner));
        });
    }

    private static int sum(Small.Machine machine, Slot parameter, Typed inner) {
        int sum = 0;
        for (int i = 1; i <= 3; i++) {
            machine.put(parameter, i);
            sum += (Integer) inner.code().run(machine);
        }
        return sum;
    }

    /** A time in words, where its class has been imported under the name {@code Duration}. */
    static Phrase duration(Phrase seconds) {
        return new Phrase("Duration.ofSeconds(" + seconds.java() + ").toString()", scope -> {
            scope.variable("Duration");
            Typed given = seconds.compiled(scope);
            require(given.type() == Sort.INT, "a whole number is needed");
            return new Typed(
                    Sort.TEXT,
                    machine -> java.time.Duration.ofSeconds(
                                    (Integer) given.code().run(machine))
                            .toString());
        });
    }

    static void require(boolean met, String why) {
        if (!met) {
            throw new Unacceptable(why);
        }
    }
}
