package rakeline.figure;

import java.util.List;
import java.util.stream.Stream;
import rakeline.study.GridMap;
import rakeline.study.Mapped;

/** A map, or a coarser picture of one, as a figure. */
public final class MapFigures {
    private static final int MOST_REASONS = 3;

    private MapFigures() {}

    public static MapFigure of(Mapped mapped) {
        return new MapFigure(
                        mapped.title(),
                        axis(mapped, mapped.map().x()),
                        axis(mapped, mapped.map().y()),
                        mapped.map().track().quantity(),
                        mapped.values(),
                        mapped.here(),
                        gaps(mapped),
                        mapped.held(),
                        mapped.cautions())
                .about(Basis.of(
                        List.of(mapped.map().start()),
                        Stream.of(mapped.map().track().key())));
    }

    private static MapFigure.Axis axis(Mapped mapped, GridMap.Axis axis) {
        return new MapFigure.Axis(
                axis.varied().setting().quantity(),
                axis.steps(),
                axis.varied().setting().valueIn(mapped.map().start().bike()));
    }

    private static List<String> gaps(Mapped mapped) {
        List<String> all = mapped.reasons().entrySet().stream()
                .map(reason -> sentence(
                        reason.getKey(), reason.getValue(), mapped.values().size()))
                .toList();
        return all.size() <= MOST_REASONS
                ? all
                : List.of(
                        all.get(0),
                        all.get(1),
                        "No value for " + (all.size() - 2) + " more reasons; in all, "
                                + mapped.gaps().size() + " of "
                                + mapped.values().size() + " places have none.");
    }

    private static String sentence(String reason, int count, int all) {
        return "No value in " + count + " of " + all + " places: " + reason + (reason.endsWith(".") ? "" : ".");
    }
}
