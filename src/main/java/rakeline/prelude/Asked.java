package rakeline.prelude;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import rakeline.geometry.BikeOrRide;
import rakeline.geometry.Setting;
import rakeline.handling.Ride;
import rakeline.quantity.Keyed;
import rakeline.quantity.Measure;
import rakeline.study.Mode;
import rakeline.study.Varied;
import rakeline.study.Vocabulary;

/** What the words of all studies have in common. */
final class Asked {
    private Asked() {}

    /** A number that varies, in the way asked for or else the usual one. */
    static Varied varied(String key, Optional<Mode> mode) {
        Setting setting = Setting.of(key);
        return new Varied(setting, mode.orElseGet(() -> Mode.usualFor(setting)));
    }

    /** Each with whoever rides it. */
    static List<Ride> rides(BikeOrRide... bikes) {
        return Arrays.stream(bikes).map(Ride::of).toList();
    }

    static List<Measure<Ride>> tracked(String... keys) {
        return Arrays.stream(keys).map(Vocabulary.standard()::tracked).toList();
    }

    static String[] keys(Keyed... declared) {
        return Arrays.stream(declared).map(Keyed::key).toArray(String[]::new);
    }

    static <T> List<T> with(List<T> some, List<T> more) {
        List<T> all = new ArrayList<>(some);
        all.addAll(more);
        return List.copyOf(all);
    }
}
