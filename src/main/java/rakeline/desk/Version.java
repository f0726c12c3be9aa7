package rakeline.desk;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Properties;

/** The program's version. */
public final class Version {
    private Version() {}

    /** As in the pom. */
    public static String number() {
        try (InputStream in = Version.class.getResourceAsStream("/rakeline/version.properties")) {
            Properties properties = new Properties();
            properties.load(in);
            return properties.getProperty("version");
        } catch (IOException e) {
            throw new UncheckedIOException("the version is part of the program", e);
        }
    }
}
