package rakeline.study.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import rakeline.geometry.Bike;
import rakeline.geometry.ContactMeasures;
import rakeline.geometry.Geometry;
import rakeline.geometry.Measures;
import rakeline.geometry.Point;
import rakeline.geometry.ToeMeasures;
import rakeline.geometry.parts.Category;
import rakeline.geometry.parts.Field;
import rakeline.quantity.Input;
import rakeline.quantity.Measure;
import rakeline.quantity.Quantity;
import rakeline.study.fit.Option.Fact;

/** What is said of an option: its parts, where it puts the hands, what it leaves, what the foot and the hands meet. */
final class Facts {
    private static final List<Measure<Geometry>> HANDS = List.of(Measures.HAND_X, Measures.HAND_Y);
    private static final List<Measure<Geometry>> FRONT =
            List.of(Measures.STEM_RISE, Measures.SPACERS_LEFT, Measures.STEERER_LEFT);
    private static final List<Measure<Geometry>> SEAT = List.of(
            Measures.POST_EXTENSION,
            Measures.POST_INSERTION_LEFT,
            Measures.POST_DEPTH_LEFT,
            Measures.RAIL_SHIFT,
            Measures.RAIL_LEFT,
            ContactMeasures.SIT_MISS);
    private static final List<Measure<Geometry>> FOOT = List.of(
            ToeMeasures.TOE_ROOM,
            ToeMeasures.TOE_CONTACT_STEER,
            ToeMeasures.PEDAL_TO_TYRE,
            ToeMeasures.PEDAL_STRIKE_LEAN);
    private static final List<Measure<Geometry>> STEERING = List.of(Measures.TRAIL, Measures.HAND_LEVER);
    private static final List<Brought> BROUGHT = brought();

    private record Brought(Quantity quantity, Input input) {}

    private Facts() {}

    static List<Fact> of(Match match, Geometry built, Geometry foot, Point miss) {
        Geometry handed = Geometry.of(built.bike(), match.reference().hands());
        List<Measure<Geometry>> seat = match.wanted().sit().isPresent() ? SEAT : List.of();
        return Stream.of(
                        parts(built.bike()),
                        read(HANDS, built),
                        misses(miss),
                        read(FRONT, built),
                        read(seat, built),
                        read(FOOT, foot),
                        read(STEERING, handed),
                        changes(handed, match.reference()))
                .flatMap(facts -> facts)
                .toList();
    }

    /** A post: its numbers, and what it leaves. */
    static List<Fact> ofPost(Bike bike) {
        List<Input> post = Category.POSTS.fields().stream()
                .map(field -> field.inputs().get(0))
                .toList();
        return Stream.concat(
                        parts(bike, BROUGHT.stream().filter(part -> post.contains(part.input()))),
                        read(SEAT, Geometry.of(bike)))
                .toList();
    }

    private static Stream<Fact> parts(Bike bike) {
        return parts(bike, BROUGHT.stream());
    }

    private static Stream<Fact> parts(Bike bike, Stream<Brought> brought) {
        return brought.filter(part -> bike.has(part.input()))
                .map(part -> new Fact(part.quantity(), bike.get(part.input())));
    }

    private static Stream<Fact> misses(Point miss) {
        return Stream.of(
                new Fact(FitQuantities.HAND_DX, miss.x()),
                new Fact(FitQuantities.HAND_DY, miss.y()),
                new Fact(FitQuantities.DISTANCE, miss.length()));
    }

    private static Stream<Fact> read(List<Measure<Geometry>> measures, Geometry geometry) {
        return measures.stream()
                .map(measure ->
                        new Fact(measure.quantity(), measure.read(geometry).orNaN()));
    }

    private static Stream<Fact> changes(Geometry now, Geometry before) {
        return Stream.of(
                change(FitQuantities.LEVER_CHANGE, Measures.HAND_LEVER, now, before),
                change(FitQuantities.TURN_CHANGE, Measures.TURN_PER_HAND_TRAVEL, now, before));
    }

    private static Fact change(Quantity quantity, Measure<Geometry> measure, Geometry now, Geometry before) {
        return new Fact(
                quantity,
                100 * (measure.read(now).orNaN() / measure.read(before).orNaN() - 1));
    }

    /** Stem and spacers first, then the other parts' numbers in the order of their keys. */
    private static List<Brought> brought() {
        List<Field> fields = new ArrayList<>(
                Category.STEMS.fields().stream().filter(Field::needed).toList());
        fields.addAll(Category.SPACERS.fields());
        Category.allFields().stream().filter(field -> !fields.contains(field)).forEach(fields::add);
        return fields.stream()
                .map(field -> new Brought(field.quantity(), field.inputs().get(0)))
                .toList();
    }
}
