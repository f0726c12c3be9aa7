package rakeline.quantity;

/** Something declared under a key: an input or a measure. */
public interface Keyed {
    /** As in files and commands, unit at its end. */
    String key();
}
