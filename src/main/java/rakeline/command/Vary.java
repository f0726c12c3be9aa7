package rakeline.command;

import java.util.Arrays;
import java.util.List;
import rakeline.geometry.Setting;
import rakeline.quantity.Numbers;
import rakeline.quantity.Refusal;
import rakeline.study.Mode;
import rakeline.study.Span;
import rakeline.study.Steps;
import rakeline.study.Varied;

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
        List<Double> range = Arrays.stream(argument.substring(equals + 1).split(":", -1))
                .map(part -> Console.number(part, "--vary " + argument))
                .toList();
        return new Vary(argument, form, Setting.of(argument.substring(0, equals)), range);
    }

    /**
     * The number with the way in which the bike follows it.
     *
     * @param as the way asked for; null for the usual one
     */
    Varied varied(String as) {
        return as == null ? Varied.of(setting) : new Varied(setting, Mode.of(as));
    }

    /** The values from FROM to TO; 201 without a step. */
    Numbers steps() {
        return switch (range.size()) {
            case 2 -> Steps.of(range.get(0), range.get(1));
            case 3 -> Steps.of(range.get(0), range.get(1), range.get(2));
            default -> throw refusal(argument, form);
        };
    }

    /** The range from FROM to TO; where the key may stand alone, everything that is accepted. */
    Span span(String as) {
        if (range.isEmpty()) {
            return Span.of(varied(as));
        }
        if (range.size() != 2) {
            throw refusal(argument, form);
        }
        return new Span(varied(as), range.get(0), range.get(1));
    }

    private static Refusal refusal(String argument, String form) {
        return new Refusal("--vary is " + argument + "; accepted is " + form + ".");
    }
}
