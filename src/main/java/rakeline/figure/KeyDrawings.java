package rakeline.figure;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rakeline.figure.Drawing.Dimension;
import rakeline.figure.Drawing.Ink;
import rakeline.figure.Drawing.Mark;
import rakeline.geometry.Geometry;
import rakeline.handling.Ride;
import rakeline.study.Vocabulary;

/** Small drawings of one bicycle, each with the one dimension that a key names. */
public final class KeyDrawings {
    private final Map<String, Drawing> drawings = new LinkedHashMap<>();

    private KeyDrawings() {}

    /** Of a bicycle that has whatever is to be shown. */
    public static KeyDrawings of(Ride ride) {
        Geometry geometry = ride.geometry();
        KeyDrawings all = new KeyDrawings();
        List<Mark> bike = SideMarks.of(geometry, 0);
        SideDimensions.of(geometry).forEach(mark -> all.add((Dimension) mark, bike));
        SideLengths.of(geometry).forEach((key, marks) -> all.add(key, bike, marks));
        PlanLengths.of(geometry).forEach((key, marks) -> all.add(key, marks, List.of()));
        return all;
    }

    /** The drawing that shows what a key means; empty where no dimension of a drawing is that. */
    public Optional<Figure> find(String key) {
        return Optional.ofNullable(drawings.get(key));
    }

    /** Inked so that a small sheet has it too. */
    private void add(Dimension dimension, List<Mark> bike) {
        Dimension inked = new Dimension(
                dimension.from(),
                dimension.to(),
                dimension.offset(),
                dimension.text(),
                dimension.key(),
                Ink.FINE,
                dimension.overlay());
        add(dimension.key(), bike, List.of(inked));
    }

    private void add(String key, List<Mark> under, List<Mark> over) {
        List<Mark> marks = new ArrayList<>(under);
        marks.addAll(over);
        String label = Vocabulary.standard().quantity(key).label();
        drawings.putIfAbsent(key, new Drawing("", label, marks, List.of(), "", List.of()));
    }
}
