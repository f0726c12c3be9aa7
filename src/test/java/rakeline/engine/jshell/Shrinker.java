package rakeline.engine.jshell;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/** Finds a short history that still fails. */
final class Shrinker {
    private Shrinker() {}

    /** Takes parts out, halves first and single ones last, for as long as what is left fails. */
    static <T> List<T> fewest(List<T> all, Predicate<List<T>> fails) {
        List<T> left = all;
        for (int size = Math.max(1, all.size() / 2); size >= 1; size /= 2) {
            for (int from = left.size() - size; from >= 0; from -= size) {
                List<T> fewer = new ArrayList<>(left);
                fewer.subList(from, Math.min(fewer.size(), from + size)).clear();
                left = fails.test(fewer) ? fewer : left;
                from = Math.min(from, left.size());
            }
        }
        return left;
    }
}
