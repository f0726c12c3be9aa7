package rakeline.rider;

import java.util.Map;
import rakeline.geometry.Bike;
import rakeline.quantity.Input;

/**
 * A body, and the shoe and contact points that go with it.
 *
 * @param name as the file gives it
 * @param own shoe and contact numbers that win over the bike's
 */
public record Rider(String name, Map<Input, Double> own) {
    public Rider {
        own = Map.copyOf(own);
    }

    /** The bike with the rider's shoe and contact points in place of its own. */
    public Bike on(Bike bike) {
        return bike.redraw(own);
    }
}
