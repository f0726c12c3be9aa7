package rakeline.study.fit;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import rakeline.geometry.Bike;
import rakeline.geometry.Refit;
import rakeline.geometry.Setting;
import rakeline.geometry.parts.Part;
import rakeline.quantity.Decimals;
import rakeline.quantity.Input;
import rakeline.study.Mode;
import rakeline.study.Varied;

/** A bike with some of its numbers changed, each in its usual way: wheels and fork length refitted, the rest redrawn. */
public final class Changed {
    private Changed() {}

    /**
     * The bike with other numbers, named by them. Another reach of the bar is another bar: hoods that stand on no levers
     * go with it.
     *
     * @throws rakeline.quantity.Refusal for an unknown key, a number out of its range, or a fork of unknown length
     */
    public static Bike of(Bike bike, Map<String, Double> changes) {
        Map<Input, Double> redrawn = new HashMap<>();
        Map<Input, Double> refitted = new HashMap<>();
        changes.forEach((key, value) -> {
            Setting setting = Setting.of(key);
            Map<Input, Double> way = Mode.usualFor(setting) == Mode.REDRAW ? redrawn : refitted;
            setting.inputs().forEach(input -> way.put(input, value));
        });
        Bike drawn = bike.redraw(new Part(redrawn).on(bike));
        Bike changed = refitted.isEmpty() ? drawn : Refit.of(drawn, refitted).bike();
        return changed.named(bike.name() + ", " + words(changes));
    }

    /** What such changes change, and in which way. */
    public static List<Varied> varied(Map<String, Double> changes) {
        return changes.keySet().stream().map(Setting::of).map(Varied::of).toList();
    }

    private static String words(Map<String, Double> changes) {
        List<String> words = changes.entrySet().stream()
                .map(change -> Setting.of(change.getKey()).quantity().label() + " "
                        + Setting.of(change.getKey()).quantity().unit().attach(Decimals.shown(change.getValue())))
                .toList();
        return words.stream().collect(Collectors.joining(", "));
    }
}
