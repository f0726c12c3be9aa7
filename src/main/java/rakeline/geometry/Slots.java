package rakeline.geometry;

import java.util.concurrent.atomic.AtomicInteger;
import rakeline.quantity.Input;
import rakeline.quantity.Quantity;

/** Gives each input of a bike file its place, whichever class declares it. */
final class Slots {
    private static final AtomicInteger NEXT = new AtomicInteger();

    private Slots() {}

    static Input declared(Quantity.Draft quantity, Input.Presence presence) {
        return new Input(quantity.declared(), presence, NEXT.getAndIncrement());
    }
}
