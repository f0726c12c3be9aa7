package rakeline.geometry;

import java.util.function.DoubleUnaryOperator;

/**
 * The side view, cockpit and seat post by vectors: lines that meet, points that are turned, the lowest point of a
 * turned circle found by search. Takes a file's numbers and shares no code with what it checks.
 */
final class BruteBike {
    private static final Space RIGHT = Space.of(0, 0, 1);
    private static final Space UP = Space.of(0, 1, 0);
    private static final Space FORWARD = Space.of(1, 0, 0);

    private final Bike bike;
    private final Space headTop;
    private final Space axis;
    private final Space rearAxle;
    private final Space frontAxle;
    private final double groundY;

    BruteBike(Bike bike) {
        this.bike = bike;
        this.headTop = Space.of(number("frame.reachMm"), number("frame.stackMm"), 0);
        this.axis = FORWARD.turned(RIGHT, Math.PI - rad("frame.headAngleDeg"));
        double drop = number("frame.bbDropMm");
        double below = Math.asin(drop / number("frame.chainstayMm"));
        this.rearAxle = FORWARD.times(-number("frame.chainstayMm")).turned(RIGHT, -below);
        this.groundY = rearAxle.y() - number("wheels.rear.radiusMm");
        Space ahead = axis.turned(RIGHT, -Math.PI / 2);
        Space axleHeight = Space.of(0, groundY + number("wheels.front.radiusMm"), 0);
        this.frontAxle = Space.meeting(headTop.plus(ahead.times(number("fork.offsetMm"))), axis, axleHeight, FORWARD);
    }

    double number(String key) {
        return bike.get(key);
    }

    private double rad(String key) {
        return Math.toRadians(number(key));
    }

    double bbHeight() {
        return -groundY;
    }

    double frontCentre() {
        return frontAxle.length();
    }

    double frontCentreX() {
        return frontAxle.dot(FORWARD);
    }

    double wheelbase() {
        return frontAxle.minus(rearAxle).dot(FORWARD);
    }

    double trail() {
        Space ground = Space.meeting(headTop, axis, Space.of(0, groundY, 0), FORWARD);
        return ground.x() - frontAxle.x();
    }

    double mechanicalTrail() {
        Space contact = frontAxle.minus(UP.times(number("wheels.front.radiusMm")));
        Space foot = headTop.plus(axis.times(contact.minus(headTop).dot(axis)));
        double ahead = foot.minus(contact).length();
        return Math.copySign(ahead, foot.x() - contact.x());
    }

    double axisCrossing() {
        Space crossing = Space.meeting(headTop, axis, frontAxle, UP);
        return 100 * (crossing.y() - groundY) / number("wheels.front.radiusMm");
    }

    /** How far above the ground the lowest point of the turned wheel is, the frame standing still. */
    double frontDrop(double steerRad) {
        Space centre = frontAxle.turnedAbout(headTop, axis, steerRad);
        DoubleUnaryOperator height =
                round -> centre.y() + rim(round).turned(axis, steerRad).y();
        return least(height) - groundY;
    }

    private Space rim(double round) {
        return FORWARD.times(number("wheels.front.radiusMm")).turned(RIGHT, round);
    }

    /** From differences of the drop at two small angles (Richardson). */
    double wheelFlop() {
        double coarse = 2 * frontDrop(0.04) / (0.04 * 0.04);
        double fine = 2 * frontDrop(0.02) / (0.02 * 0.02);
        return (4 * fine - coarse) / 3;
    }

    /** The angle between the lines in which both wheels' planes cut the ground, steered and leaned to the left. */
    double groundSteer() {
        double lean = rad("ride.leanDeg");
        Space normal = RIGHT.turned(axis, rad("ride.steerDeg"));
        Space track = UP.cross(normal.turned(FORWARD, -lean)).unit();
        Space along = FORWARD;
        double cosine = Math.abs(track.dot(along));
        double sine = track.cross(along).length();
        return Math.toDegrees(Math.atan2(sine, cosine));
    }

    Space clamp() {
        double up = number("cockpit.headsetCoverMm")
                + number("cockpit.spacersMm")
                + number("cockpit.stemClampHeightMm") / 2;
        Space stem = axis.turned(RIGHT, -Math.PI / 2 + rad("cockpit.stemAngleDeg"));
        return headTop.plus(axis.times(up)).plus(stem.times(number("cockpit.stemLengthMm")));
    }

    Space hood() {
        return clamp().plus(Space.of(
                number("cockpit.bar.hoodForwardMm"),
                number("cockpit.bar.hoodRiseMm"),
                number("cockpit.bar.widthMm") / 2));
    }

    Space drops() {
        return clamp().plus(Space.of(
                number("cockpit.bar.reachMm"), -number("cockpit.bar.dropMm"), number("cockpit.bar.widthMm") / 2));
    }

    /** Distance of a point to the steering axis. */
    double lever(Space hand) {
        return hand.minus(headTop).cross(axis).length();
    }

    /** A hand's path over a degree of steer, taken from a tiny turn. */
    Space travelPerDegree(Space hand) {
        double tiny = 1e-6;
        return hand.turnedAbout(headTop, axis, tiny)
                .minus(hand.turnedAbout(headTop, axis, -tiny))
                .times(Math.toRadians(1) / (2 * tiny));
    }

    private Space seatUp() {
        return FORWARD.turned(RIGHT, Math.PI - rad("frame.seatTubeAngleDeg"));
    }

    /** Where the line from BB at the effective seat angle reaches the height at which it is taken. */
    private Space seatPoint() {
        Space line = FORWARD.turned(RIGHT, Math.PI - rad("frame.seatAngleDeg"));
        return Space.meeting(Space.of(0, 0, 0), line, Space.of(0, number("frame.seatAngleAtMm"), 0), FORWARD);
    }

    private Space seatFoot() {
        return seatPoint().minus(seatUp().times(seatPoint().dot(seatUp())));
    }

    double effectiveTopTube() {
        return headTop.x()
                - Space.meeting(seatPoint(), seatUp(), headTop, FORWARD).x();
    }

    double standover() {
        Space head = headTop.minus(axis.times(number("frame.topTube.headJunctionMm")));
        Space seat = seatFoot().plus(seatUp().times(number("frame.topTube.seatJunctionMm")));
        Space along = head.minus(seat).unit();
        Space edge = seat.plus(along.turned(RIGHT, Math.PI / 2).times(number("frame.topTube.diameterMm") / 2));
        return Space.meeting(edge, along, Space.of(number("frame.straddleXMm"), 0, 0), UP)
                        .y()
                - groundY;
    }

    private Space clampOfSaddle() {
        Space rearward = seatUp().turned(RIGHT, Math.PI / 2);
        Space line = seatPoint().plus(rearward.times(number("seatpost.setbackMm")));
        Space height = Space.of(0, number("contact.sitYMm") - number("saddle.railToTopMm"), 0);
        return Space.meeting(line, seatUp(), height, FORWARD);
    }

    double railShift() {
        return number("contact.sitXMm")
                + number("saddle.sitBehindRailsMm")
                - clampOfSaddle().x();
    }

    double postExtension() {
        Space rim = seatFoot().plus(seatUp().times(number("frame.seatTubeMm")));
        return clampOfSaddle().minus(rim).dot(seatUp());
    }

    double axleToCrown() {
        double fromTop = number("frame.headTubeMm") + number("fork.lowerStackMm") - number("fork.sagMm");
        Space crown = headTop.minus(axis.times(fromTop));
        return frontAxle.minus(crown).length();
    }

    /** Least of a periodic function with one valley: a grid, then golden sections. */
    private static double least(DoubleUnaryOperator function) {
        int grid = 72;
        double best = 0;
        for (int i = 1; i < grid; i++) {
            double at = 2 * Math.PI * i / grid;
            best = function.applyAsDouble(at) < function.applyAsDouble(best) ? at : best;
        }
        double ratio = (Math.sqrt(5) - 1) / 2;
        double low = best - 2 * Math.PI / grid;
        double high = best + 2 * Math.PI / grid;
        while (high - low > 1e-9) {
            double left = high - ratio * (high - low);
            double right = low + ratio * (high - low);
            if (function.applyAsDouble(left) < function.applyAsDouble(right)) {
                high = right;
            } else {
                low = left;
            }
        }
        return function.applyAsDouble((low + high) / 2);
    }
}
