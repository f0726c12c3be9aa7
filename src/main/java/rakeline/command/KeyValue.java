package rakeline.command;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rakeline.quantity.Refusal;

/** Arguments of the form {@code KEY=VALUE}. */
final class KeyValue {
    private KeyValue() {}

    /**
     * The values by key, in order.
     *
     * @param option as it is named in a refusal
     */
    static Map<String, Double> numbers(String option, List<String> arguments) {
        Map<String, Double> values = new LinkedHashMap<>();
        for (String argument : arguments) {
            int equals = argument.indexOf('=');
            if (equals < 1) {
                throw new Refusal(option + " is " + argument + "; accepted is KEY=VALUE.");
            }
            String key = argument.substring(0, equals);
            if (values.put(key, Console.number(argument.substring(equals + 1), option + " " + key)) != null) {
                throw new Refusal(option + " names " + key + " twice; accepted is once.");
            }
        }
        return values;
    }
}
