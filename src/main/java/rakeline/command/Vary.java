package rakeline.command;

import java.util.List;
import java.util.function.Supplier;
import rakeline.geometry.Setting;
import rakeline.quantity.Numbers;
import rakeline.quantity.Refusal;
import rakeline.study.Span;

/**
 * An argument of the form {@code KEY=FROM:TO:STEP}, of which a command accepts a part.
 *
 * @param form as the command accepts it
 * @param range the numbers after the key; none where the key stands alone
 */
record Vary(String argument, String form, Setting setting, List<Double> range) {
    static final String STEPPED = "KEY=FROM:TO:STEP";
    static final String RANGE = "KEY=FROM:TO";
    static final String KEY = "KEY or KEY=FROM:TO";

    Vary {
        range = List.copyOf(range);
    }

    /**
     * Reads an argument of {@code --vary}.
     *
     * @throws Refusal for another form, an unknown key or what is no number
     */
    static Vary of(String argument, String form) {
        int equals = argument.indexOf('=');
        if (equals < 0 && form.equals(KEY)) {
            return new Vary(argument, form, Setting.of(argument), List.of());
        }
        if (equals < 1) {
            throw refusal(argument, form);
        }
        List<Double> range = StepsArgument.numbers(argument.substring(equals + 1), "--vary " + argument);
        return new Vary(argument, form, Setting.of(argument.substring(0, equals)), range);
    }

    /** The values from FROM to TO; 201 without a step. */
    Numbers steps() {
        return named(() -> StepsArgument.of(range)).orElseThrow(() -> refusal(argument, form));
    }

    /** The range from FROM to TO; where the key may stand alone, everything that is accepted. */
    Span span(AsOption as) {
        if (range.isEmpty()) {
            return Span.of(as.varied(setting));
        }
        if (range.size() != 2) {
            throw refusal(argument, form);
        }
        return named(() -> new Span(as.varied(setting), range.get(0), range.get(1)));
    }

    /** A refusal of what the numbers make names the argument. */
    private <T> T named(Supplier<T> made) {
        try {
            return made.get();
        } catch (Refusal e) {
            throw e.in("--vary " + argument);
        }
    }

    private static Refusal refusal(String argument, String form) {
        return new Refusal("--vary is " + argument + "; accepted is " + form + ".");
    }
}
