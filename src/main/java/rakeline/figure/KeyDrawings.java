package rakeline.figure;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rakeline.figure.Drawing.Circle;
import rakeline.figure.Drawing.Dimension;
import rakeline.figure.Drawing.Ink;
import rakeline.figure.Drawing.Mark;
import rakeline.figure.Drawing.Path;
import rakeline.geometry.Geometry;
import rakeline.handling.Ride;
import rakeline.quantity.Measure;
import rakeline.study.Vocabulary;

/** Small drawings of one bicycle, each with the one dimension that a key names. */
public final class KeyDrawings {
    private final Ride ride;
    private final Map<String, Drawing> drawings = new LinkedHashMap<>();

    private KeyDrawings(Ride ride) {
        this.ride = ride;
    }

    /** Of a bicycle that has whatever is to be shown. */
    public static KeyDrawings of(Ride ride) {
        Geometry geometry = ride.geometry();
        KeyDrawings all = new KeyDrawings(ride);
        List<Mark> bike =
                SideMarks.of(geometry, 0).stream().map(KeyDrawings::faded).toList();
        SideDimensions.of(geometry).forEach(mark -> all.add((Dimension) mark, bike));
        SideLengths.of(geometry).forEach((key, marks) -> all.add(key, bike, marks));
        PlanLengths.of(geometry).forEach((key, marks) -> all.add(key, marks, List.of()));
        return all;
    }

    /** The drawing that shows what a key means; empty where no dimension of a drawing is that. */
    public Optional<Figure> find(String key) {
        return Optional.ofNullable(drawings.get(key));
    }

    /** So that the dimension stands out. */
    private static Mark faded(Mark mark) {
        if (mark instanceof Circle circle) {
            return new Circle(circle.centre(), circle.radius(), circle.filled(), Ink.SOFT, 0);
        }
        return mark instanceof Path path && path.ink() == Ink.BOLD
                ? new Path(path.points(), path.closed(), path.filled(), Ink.SOFT, 0)
                : mark;
    }

    /** Inked as the only one of its sheet. */
    private void add(Dimension dimension, List<Mark> bike) {
        Dimension inked = new Dimension(
                dimension.from(),
                dimension.to(),
                dimension.offset(),
                number(dimension),
                dimension.key(),
                Ink.BOLD,
                dimension.overlay());
        add(dimension.key(), bike, List.of(inked));
    }

    /** The number alone: what it measures is said beside the drawing. */
    private String number(Dimension dimension) {
        Measure<Ride> tracked = Vocabulary.standard().tracked(dimension.key());
        return tracked.quantity().formatWithUnit(tracked.read(ride).orNaN());
    }

    private void add(String key, List<Mark> under, List<Mark> over) {
        List<Mark> marks = new ArrayList<>(under);
        marks.addAll(over);
        String label = Vocabulary.standard().quantity(key).label();
        drawings.putIfAbsent(key, new Drawing("", label, marks, List.of(), "", List.of()));
    }
}
