package rakeline.prelude;

import java.util.List;
import java.util.concurrent.atomic.AtomicReference;
import rakeline.catalogue.Roots;

/** What a running row is given from outside; where none are put in force, those of a place without a worksheet. */
public interface Surroundings {
    /**
     * The value that the dial being initialised stands at.
     *
     * @throws rakeline.quantity.Refusal where no top-level variable is being initialised by it
     */
    double dial(DialRequest asked);

    /**
     * What is chosen in the picker being initialised.
     *
     * @throws rakeline.quantity.Refusal where no top-level variable is being initialised by it, or the file of what is
     *     chosen cannot be read
     */
    <T> Listed<T> pick(PickRequest<T> asked);

    /** Where files are found. */
    Roots roots();

    /** Paths of the bikes on the worksheet's rack. */
    default List<String> rack() {
        return List.of();
    }

    /** The surroundings in force. */
    static Surroundings current() {
        return Holder.CURRENT.get();
    }

    /** Puts surroundings in force: the worker does, once, before the first row. */
    static void set(Surroundings surroundings) {
        Holder.CURRENT.set(surroundings);
    }

    /** Where the one value in force is kept. */
    final class Holder {
        private static final AtomicReference<Surroundings> CURRENT = new AtomicReference<>(new OutsideAWorksheet());

        private Holder() {}
    }
}
