package rakeline.engine.jshell;

import java.io.File;
import java.net.URISyntaxException;
import java.nio.file.Path;
import java.security.CodeSource;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Where the program's own classes and the libraries that a worker needs lie, told by the classes themselves. */
final class ClassPath {
    /** One class of each library that rows can reach. */
    private static final List<String> LIBRARIES = List.of(
            "com.fasterxml.jackson.databind.ObjectMapper",
            "com.fasterxml.jackson.core.JsonFactory",
            "com.fasterxml.jackson.annotation.JsonProperty",
            "org.hipparchus.util.FastMath",
            "org.hipparchus.geometry.euclidean.twod.Vector2D",
            "org.hipparchus.optim.PointValuePair");

    private ClassPath() {}

    /** The class path for worker and compiler. */
    static String ofProgram() {
        Set<String> places = new LinkedHashSet<>();
        places.add(placeOf(ClassPath.class));
        for (String name : LIBRARIES) {
            places.add(placeOf(load(name)));
        }
        return String.join(File.pathSeparator, places);
    }

    private static Class<?> load(String name) {
        try {
            return Class.forName(name, false, ClassPath.class.getClassLoader());
        } catch (ClassNotFoundException e) {
            throw new IllegalStateException("The program is incomplete: " + name + " is missing.", e);
        }
    }

    private static String placeOf(Class<?> type) {
        CodeSource source = type.getProtectionDomain().getCodeSource();
        try {
            return Path.of(source.getLocation().toURI()).toString();
        } catch (URISyntaxException e) {
            throw new IllegalStateException("The program lies at a place that has no path: " + source, e);
        }
    }
}
