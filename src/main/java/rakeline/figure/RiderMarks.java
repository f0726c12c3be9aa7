package rakeline.figure;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import rakeline.figure.Drawing.Circle;
import rakeline.figure.Drawing.Ink;
import rakeline.figure.Drawing.Mark;
import rakeline.figure.Drawing.Path;
import rakeline.geometry.Point;
import rakeline.rider.Legs;
import rakeline.rider.Ridden;
import rakeline.rider.Torso;

/** The marks of a rider's linkage, cranks level, the right foot forward; a limb that cannot close is left out. */
final class RiderMarks {
    private static final double JOINT_MM = 9;

    private RiderMarks() {}

    static List<Mark> of(Ridden ridden, int overlay) {
        List<Mark> marks = new ArrayList<>();
        ridden.legs().filter(legs -> legs.miss().isEmpty()).ifPresent(legs -> {
            marks.addAll(leg(legs, Math.PI, Ink.FAINT, overlay));
            marks.addAll(leg(legs, 0, Ink.SOFT, overlay));
        });
        ridden.torso().filter(torso -> torso.miss().isEmpty()).ifPresent(torso -> marks.addAll(torso(torso, overlay)));
        return List.copyOf(marks);
    }

    private static List<Mark> leg(Legs legs, double crank, Ink ink, int overlay) {
        return chain(ink, overlay, legs.hip(), legs.knee(crank), legs.ankle(crank), legs.pedal(crank));
    }

    private static List<Mark> torso(Torso torso, int overlay) {
        return chain(Ink.SOFT, overlay, torso.hip(), torso.shoulder(), torso.elbow(), torso.wrist(), torso.grip());
    }

    private static List<Mark> chain(Ink ink, int overlay, Point... joints) {
        List<Drawing.Point> points = Arrays.stream(joints)
                .map(joint -> new Drawing.Point(joint.x(), joint.y()))
                .toList();
        List<Mark> marks = new ArrayList<>();
        marks.add(new Path(points, false, false, ink, overlay));
        points.forEach(point -> marks.add(new Circle(point, JOINT_MM, false, ink, overlay)));
        return marks;
    }
}
