package rakeline.prelude;

import java.lang.System.Logger;
import java.lang.System.Logger.Level;
import java.nio.file.Path;
import java.util.List;
import rakeline.catalogue.Roots;
import rakeline.quantity.Decimals;

/**
 * What calls of the library are given where no worksheet runs, as in a plain {@code jshell}: files of the working
 * directory and those that come with the program. Nothing moves a dial there, and nobody chooses; the log says so.
 */
final class OutsideAWorksheet implements Surroundings {
    private static final Logger LOG = System.getLogger("rakeline");

    private final Roots roots = new Roots(List.of(Path.of("").toAbsolutePath()));

    /** The value that the dial starts at. */
    @Override
    public double dial(DialRequest asked) {
        LOG.log(
                Level.INFO,
                "Outside a worksheet nothing moves a dial: \"" + asked.label() + "\" stays where it starts, at "
                        + Decimals.fixed(asked.initial(), asked.decimals())
                        + (" " + asked.unit()).replace(" °", "°").stripTrailing() + ".");
        return asked.initial();
    }

    /** The first of the choices. */
    @Override
    public <T> Listed<T> pick(PickRequest<T> asked) {
        Listed<T> first = asked.at("");
        LOG.log(
                Level.INFO,
                "Outside a worksheet nobody chooses: \"" + asked.label() + "\" is the first, " + first.path() + ".");
        return first;
    }

    @Override
    public Roots roots() {
        return roots;
    }
}
