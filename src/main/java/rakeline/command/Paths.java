package rakeline.command;

import java.nio.charset.Charset;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import rakeline.catalogue.BikeFile;
import rakeline.catalogue.Bytes;
import rakeline.geometry.Bike;
import rakeline.quantity.Refusal;

/** Paths of the command line: they resolve against the working directory. */
final class Paths {
    private Paths() {}

    /**
     * The path of an argument.
     *
     * @throws Refusal where the platform's encoding cannot name it
     */
    static Path of(String argument) {
        try {
            return Path.of(argument);
        } catch (InvalidPathException e) {
            String encoding = System.getProperty(
                    "sun.jnu.encoding", Charset.defaultCharset().name());
            throw new Refusal(
                    "the path " + argument + " cannot be named in this platform's encoding, " + encoding
                            + "; accepted is a name in it, or a start under a UTF-8 locale.",
                    e);
        }
    }

    static Bike bike(String argument) {
        return BikeFile.read(Bytes.read(of(argument), BikeFile.SIZE_LIMIT), argument);
    }
}
