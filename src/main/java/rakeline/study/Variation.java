package rakeline.study;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import rakeline.geometry.Bike;
import rakeline.geometry.Refit;
import rakeline.geometry.Setting;
import rakeline.quantity.Input;
import rakeline.quantity.Refusal;

/**
 * A bike with one number that varies, or several: those that are redrawn are drawn first, then those that are refitted
 * are exchanged together.
 */
public record Variation(Bike base, List<Varied> varied) {
    public Variation {
        varied = List.copyOf(varied);
        checkDistinct(varied);
        for (Varied each : varied) {
            if (each.mode() == Mode.REFIT) {
                Refit.check(base, each.setting().inputs());
            }
        }
    }

    /** With one number that varies. */
    public static Variation of(Bike base, Setting vary, Mode mode) {
        return new Variation(base, List.of(new Varied(vary, mode)));
    }

    /** With another number that is solved for: exchanged with the others where they are refitted and it can be. */
    Variation solvingFor(Setting by) {
        boolean refitted = varied.stream().anyMatch(each -> each.mode() == Mode.REFIT);
        boolean exchanged = by.inputs().stream().allMatch(Refit::exchanges);
        List<Varied> all = new ArrayList<>(varied);
        all.add(new Varied(by, refitted && exchanged ? Mode.REFIT : Mode.REDRAW));
        return new Variation(base, all);
    }

    /**
     * The bike at values, one for each number that varies.
     *
     * @throws Refusal where no bike has them
     */
    public Bike at(double... values) {
        Map<Input, Double> drawn = changes(Mode.REDRAW, values);
        Map<Input, Double> exchanged = changes(Mode.REFIT, values);
        Bike redrawn = drawn.isEmpty() ? base : base.withSolved(drawn);
        return exchanged.isEmpty() ? redrawn : Refit.of(redrawn, exchanged).bike();
    }

    private Map<Input, Double> changes(Mode mode, double... values) {
        Map<Input, Double> changes = new HashMap<>();
        for (int i = 0; i < values.length; i++) {
            if (varied.get(i).mode() == mode) {
                for (Input input : varied.get(i).setting().inputs()) {
                    changes.put(input, values[i]);
                }
            }
        }
        return changes;
    }

    private static void checkDistinct(List<Varied> varied) {
        Set<Input> seen = new HashSet<>();
        for (Varied each : varied) {
            if (!each.setting().inputs().stream().allMatch(seen::add)) {
                throw new Refusal(
                        each.setting().quantity().withKey() + " is varied twice; accepted are different inputs.");
            }
        }
    }
}
