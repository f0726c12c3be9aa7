package rakeline.command;

import rakeline.quantity.Refusal;
import rakeline.study.Target;
import rakeline.study.Vocabulary;

/**
 * An argument of the form {@code KEY[=VALUE]}.
 *
 * @param option as it is named in a refusal
 * @param valueOrNaN NaN where none is given
 */
record Wanted(String option, String argument, String key, double valueOrNaN) {
    static Wanted of(String option, String argument) {
        int equals = argument.indexOf('=');
        double value =
                equals < 0 ? Double.NaN : Console.number(argument.substring(equals + 1), option + " " + argument);
        return new Wanted(option, argument, equals < 0 ? argument : argument.substring(0, equals), value);
    }

    /**
     * As a target, whose value may not be left out.
     *
     * @throws Refusal without a value or for an unknown key
     */
    Target target(Vocabulary vocabulary) {
        if (Double.isNaN(valueOrNaN)) {
            throw new Refusal(option + " is " + argument + "; accepted is MEASURE=VALUE.");
        }
        return new Target(vocabulary.tracked(key), valueOrNaN);
    }
}
