package rakeline.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import rakeline.figure.Drawing.Dimension;
import rakeline.figure.Drawing.Ink;
import rakeline.figure.Drawing.Mark;
import rakeline.geometry.Geometry;
import rakeline.geometry.Inputs;
import rakeline.geometry.Measures;
import rakeline.geometry.Point;
import rakeline.geometry.SideView;
import rakeline.quantity.Measure;
import rakeline.quantity.Quantity;

/** The dimensions around a side view: on the ground, above, and ahead of the bicycle, as far as its groups are given. */
final class SideDimensions {
    /** The dimensions that a small sheet keeps. */
    private static final Set<String> FIRST = Set.of(
            Measures.TRAIL.key(),
            Measures.FRONT_CENTRE_X.key(),
            Measures.WHEELBASE.key(),
            Inputs.STACK.key(),
            Inputs.REACH.key());

    private static final double LINE = 62;
    private static final double NEAR = 45;

    private final Geometry geometry;
    private final SideView side;
    private final List<Mark> marks = new ArrayList<>();

    private SideDimensions(Geometry geometry) {
        this.geometry = geometry;
        this.side = geometry.side();
    }

    static List<Mark> of(Geometry geometry) {
        SideDimensions dimensions = new SideDimensions(geometry);
        dimensions.below();
        dimensions.ahead();
        dimensions.above();
        dimensions.standover();
        return List.copyOf(dimensions.marks);
    }

    private void below() {
        double ground = -side.bbHeightMm();
        Point touch = new Point(side.frontAxleXMm(), ground);
        measured(Measures.TRAIL, touch, touch.plus(new Point(side.trailMm(), 0)), -NEAR);
        measured(Measures.FRONT_CENTRE_X, new Point(0, ground), touch, -NEAR);
        measured(Measures.WHEELBASE, new Point(side.rearAxleXMm(), ground), touch, -NEAR - LINE);
    }

    private void ahead() {
        double right = side.frontAxleXMm() + side.frontRadiusMm() + NEAR;
        geometry.cockpit()
                .ifPresent(cockpit -> upright(
                        Measures.BAR_Y.quantity(),
                        "bar up",
                        right,
                        cockpit.clamp().y()));
        upright(
                Inputs.STACK.quantity(),
                "stack",
                geometry.cockpit().isPresent() ? right + LINE : right,
                side.stackMm());
    }

    private void above() {
        level(Inputs.REACH.quantity(), "reach", NEAR, side.reachMm());
        geometry.cockpit()
                .ifPresent(cockpit -> level(
                        Measures.BAR_X.quantity(),
                        "bar ahead",
                        NEAR + LINE,
                        cockpit.clamp().x()));
        geometry.sitPoint().ifPresent(this::saddle);
    }

    private void saddle(Point sit) {
        level(Measures.SADDLE_SETBACK.quantity(), "saddle behind", NEAR, sit.x());
        behind(Inputs.CONTACT_SIT_Y.quantity(), "saddle up", sit.x(), 0, sit.y(), 0);
    }

    private void standover() {
        geometry.topTube()
                .filter(tube -> tube.isStraddledOnTheTube())
                .ifPresent(tube -> behind(
                        Measures.STANDOVER.quantity(),
                        "standover",
                        tube.straddleXMm(),
                        -side.bbHeightMm(),
                        tube.topEdgeMm(),
                        LINE));
    }

    /** Behind the rear wheel, its ends led there from where they are measured. */
    private void behind(Quantity quantity, String words, double x, double low, double high, double further) {
        double line = side.rearAxleXMm() - geometry.bike().get(Inputs.REAR_RADIUS) - NEAR - further;
        add(quantity, words, high - low, new Point(x, low), new Point(x, high), x - line);
    }

    private double highest() {
        double bar = geometry.handPoint().map(hand -> hand.at().y()).orElse(0.0);
        double top = Math.max(bar, side.stackMm() + 10);
        return geometry.bike().hasGroup("contact")
                ? Math.max(top, geometry.bike().get(Inputs.CONTACT_SIT_Y))
                : top;
    }

    private void measured(Measure<Geometry> measure, Point from, Point to, double offset) {
        Quantity quantity = measure.quantity();
        double value = measure.read(geometry).orNaN();
        add(quantity, quantity.label().toLowerCase(Locale.ROOT), value, from, to, offset);
    }

    private void upright(Quantity quantity, String words, double x, double height) {
        add(quantity, words, height, new Point(x, height), new Point(x, 0), 0);
    }

    /** From above BB, ahead or behind, over all that is solid. */
    private void level(Quantity quantity, String words, double offset, double x) {
        double y = highest();
        add(quantity, words, Math.abs(x), new Point(Math.min(0, x), y), new Point(Math.max(0, x), y), offset);
    }

    private void add(Quantity quantity, String words, double value, Point from, Point to, double offset) {
        String text = words + " " + quantity.format(value);
        Ink ink = FIRST.contains(quantity.key()) ? Ink.FINE : Ink.FAINT;
        marks.add(new Dimension(on(from), on(to), offset, text, quantity.key(), ink, 0));
    }

    private static Drawing.Point on(Point point) {
        return new Drawing.Point(point.x(), point.y());
    }
}
