package rakeline.command;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import rakeline.catalogue.BikeFile;
import rakeline.catalogue.Bytes;
import rakeline.catalogue.DynamicsFile;
import rakeline.catalogue.Format;
import rakeline.catalogue.PartsFile;
import rakeline.catalogue.RiderFile;
import rakeline.geometry.Bike;
import rakeline.geometry.parts.Stock;
import rakeline.handling.Dynamics;
import rakeline.quantity.Refusal;
import rakeline.rider.Rider;
import rakeline.study.fit.Wanted;

/** Paths of the command line: they resolve against the working directory. */
final class Paths {
    private Paths() {}

    /**
     * The path of an argument.
     *
     * @throws Refusal where it is empty, or the platform's encoding cannot name it
     */
    static Path of(String argument) {
        if (argument.isBlank()) {
            throw new Refusal("\"" + argument + "\" names no file; accepted is a path.");
        }
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

    /**
     * A folder to write into, made where it is missing.
     *
     * @throws Refusal where it cannot be made
     */
    static Path folder(String argument) {
        try {
            return Files.createDirectories(of(argument));
        } catch (FileAlreadyExistsException e) {
            throw new Refusal(argument + " is a file; accepted is a folder.", e);
        } catch (IOException e) {
            throw new Refusal(argument + " is not a folder that can be written to.", e);
        }
    }

    static Dynamics dynamics(String argument) {
        return DynamicsFile.read(Bytes.read(of(argument), DynamicsFile.SIZE_LIMIT), argument);
    }

    /** What a file's {@code format} says; empty where it says none. */
    static String format(String argument) {
        return Format.of(Bytes.read(of(argument), RiderFile.SIZE_LIMIT), argument);
    }

    static Bike bike(String argument) {
        return BikeFile.read(Bytes.read(of(argument), BikeFile.SIZE_LIMIT), argument);
    }

    static Stock stock(String argument) {
        return PartsFile.read(Bytes.read(of(argument), PartsFile.SIZE_LIMIT), argument);
    }

    /**
     * The contact points that a file gives, a rider's or a bike's.
     *
     * @throws Refusal for a file that is neither, or gives none
     */
    static Wanted wanted(String argument) {
        return format(argument).equals(RiderFile.FORMAT) ? Wanted.of(rider(argument)) : Wanted.of(bike(argument));
    }

    static Rider rider(String argument) {
        return RiderFile.read(Bytes.read(of(argument), RiderFile.SIZE_LIMIT), argument);
    }
}
