package rakeline.catalogue;

import java.io.IOException;
import java.io.InputStream;
import java.net.JarURLConnection;
import java.net.URI;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rakeline.quantity.Refusal;

/**
 * The places where a row's files are found, in order: the worksheet's folder, the user's Rakeline folder, then what is
 * bundled with the program. The working directory is not among them.
 *
 * @param folders existing or not; the first that holds a name wins
 * @param links whether symbolic links may leave their folder
 * @param reading told of each place that is looked at, before it is read
 */
public record Roots(List<Path> folders, Links links, Consumer<Path> reading) {
    /** What becomes of a symbolic link that leaves its folder. */
    public enum Links {
        REFUSED,
        FOLLOWED
    }

    private static final String BUNDLED = "/rakeline/bundled/";

    public Roots {
        folders = List.copyOf(folders);
    }

    /** Places whose reading nobody follows, and whose links do not leave them. */
    public Roots(List<Path> folders) {
        this(folders, Links.REFUSED, file -> {});
    }

    /** Only what is bundled. */
    public static Roots bundled() {
        return new Roots(List.of());
    }

    /**
     * Finds and reads a file.
     *
     * @param limit the size in bytes beyond which it is refused
     * @throws Refusal where no place holds it, or it is too large, a folder, or a link that leaves its place
     */
    public byte[] read(String name, long limit) {
        for (Path folder : folders) {
            Path file = inside(folder, name);
            reading.accept(file);
            if (Files.exists(file)) {
                return Bytes.read(stayingIn(folder, file, name), limit);
            }
        }
        return fromProgram(name, limit);
    }

    private String nowhere(String name) {
        String bundled = "bundled with the program.";
        return folders.isEmpty()
                ? name + " is not " + bundled
                : folders.stream()
                        .map(folder -> "in " + folder + " nor ")
                        .collect(Collectors.joining("", name + " is neither ", bundled));
    }

    /**
     * The paths by which rows name the files of a kind: those that lie in the folders themselves, in their order, then
     * the bundled ones.
     */
    public List<String> paths(Bundled kind) {
        return Stream.concat(
                        folders.stream().flatMap(folder -> own(folder, kind.ending()).stream()), kind.paths().stream())
                .distinct()
                .toList();
    }

    /** Names in a folder; none where it is not there or cannot be looked into, which hides nothing else. */
    private List<String> own(Path folder, String ending) {
        reading.accept(folder);
        try (Stream<Path> files = Files.isDirectory(folder) ? Files.list(folder) : Stream.empty()) {
            return files.map(file -> file.getFileName().toString())
                    .filter(name -> name.endsWith(ending))
                    .sorted()
                    .toList();
        } catch (IOException closed) {
            // a folder that its owner keeps closed offers nothing
            return List.of();
        }
    }

    /** The names of the bundled files in a folder that end so, sorted. */
    public static List<String> bundledIn(String folder, String ending) {
        try {
            URI place = Roots.class.getResource(BUNDLED + folder).toURI();
            if (!place.getScheme().equals("jar")) {
                return named(Path.of(place), folder, ending);
            }
            synchronized (Roots.class) {
                try (FileSystem jar = FileSystems.newFileSystem(place, Map.of())) {
                    return named(jar.getPath(BUNDLED + folder), folder, ending);
                }
            }
        } catch (IOException | URISyntaxException e) {
            throw new IllegalStateException("what is bundled can always be listed", e);
        }
    }

    private static List<String> named(Path place, String folder, String ending) throws IOException {
        try (Stream<Path> files = Files.list(place)) {
            return files.map(file -> file.getFileName().toString())
                    .filter(name -> name.endsWith(ending))
                    .map(name -> folder + "/" + name)
                    .sorted()
                    .toList();
        }
    }

    private static Path inside(Path folder, String name) {
        try {
            Path file = folder.resolve(name).normalize();
            if (Path.of(name).isAbsolute() || !file.startsWith(folder.normalize())) {
                throw new Refusal(name + " leads out of " + folder + "; accepted is a path inside it.");
            }
            return file;
        } catch (InvalidPathException e) {
            throw new Refusal("\"" + name + "\" is not a path on this system.", e);
        }
    }

    private Path stayingIn(Path folder, Path file, String name) {
        try {
            if (links == Links.REFUSED && !file.toRealPath().startsWith(folder.toRealPath())) {
                throw new Refusal(name + " is a link that leaves " + folder + "; the preferences can allow it.");
            }
            return file;
        } catch (IOException e) {
            throw Bytes.unreadable(name, e);
        }
    }

    private byte[] fromProgram(String name, long limit) {
        URL url = name.contains("..") ? null : Roots.class.getResource(BUNDLED + name);
        try {
            if (url == null || isFolder(url)) {
                throw new Refusal(nowhere(name));
            }
            try (InputStream in = url.openStream()) {
                return Bytes.read(in, name, limit);
            }
        } catch (IOException e) {
            throw Bytes.unreadable(name, e);
        }
    }

    private static boolean isFolder(URL url) throws IOException {
        return url.openConnection() instanceof JarURLConnection inJar
                ? inJar.getJarEntry().isDirectory()
                : Files.isDirectory(Path.of(URI.create(url.toString())));
    }
}
