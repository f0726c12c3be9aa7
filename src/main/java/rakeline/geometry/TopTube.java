package rakeline.geometry;

/**
 * The top tube's centreline and where it is straddled.
 *
 * @param straddleXMm ahead of BB
 * @param radiusMm of the tube
 */
public record TopTube(Point atHead, Point atSeat, double straddleXMm, double radiusMm) {
    /** The top tube of a bike that has the group. */
    public static TopTube of(Bike bike, SideView side) {
        Point head = side.onAxis(-bike.get(Inputs.TOP_TUBE_HEAD_JUNCTION));
        Point seat = SeatAxis.of(bike).at(bike.get(Inputs.TOP_TUBE_SEAT_JUNCTION));
        double straddle = bike.has(Inputs.STRADDLE_X) ? bike.get(Inputs.STRADDLE_X) : (head.x() + seat.x()) / 2;
        return new TopTube(head, seat, straddle, bike.get(Inputs.TOP_TUBE_DIAMETER) / 2);
    }

    public boolean isStraddledOnTheTube() {
        return straddleXMm >= atSeat.x() && straddleXMm <= atHead.x();
    }

    /** Height above BB of the tube's top edge at the straddle point: centreline + radius / cos slope. */
    public double topEdgeMm() {
        Point along = atHead.minus(atSeat);
        double slope = along.y() / along.x();
        return atSeat.y() + slope * (straddleXMm - atSeat.x()) + radiusMm * Math.hypot(1, slope);
    }
}
