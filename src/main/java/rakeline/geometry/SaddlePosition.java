package rakeline.geometry;

/**
 * Post and rails that put the sit point where it is wanted.
 *
 * @param extensionMm seat tube's upper edge to the clamp's foot, along the axis; NaN where the tube is not given
 * @param railShiftMm saddle moved on its rails, positive forward
 * @param clampFoot the clamp's foot on the seat axis
 */
public record SaddlePosition(double extensionMm, double railShiftMm, Point clampFoot) {
    /** Solves for a bike that has the groups contact, seatpost and saddle. */
    public static SaddlePosition of(Bike bike) {
        SeatAxis axis = SeatAxis.of(bike);
        Point setback = axis.rearward().times(bike.get(Inputs.POST_SETBACK));
        double clampY = bike.get(Inputs.CONTACT_SIT_Y) - bike.get(Inputs.RAIL_TO_TOP);
        double along = axis.alongAtHeight(clampY - setback.y());
        Point foot = axis.at(along);
        double shift = bike.get(Inputs.CONTACT_SIT_X) + bike.get(Inputs.SIT_BEHIND_RAILS) - (foot.x() + setback.x());
        return new SaddlePosition(along - bike.get(Inputs.SEAT_TUBE), shift, foot);
    }
}
