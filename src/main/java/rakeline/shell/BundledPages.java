package rakeline.shell;

import java.io.IOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import rakeline.catalogue.Roots;
import rakeline.quantity.Refusal;
import rakeline.worksheet.Worksheet;
import rakeline.worksheet.WorksheetFile;

/** The worksheets that come with the program. */
final class BundledPages {
    /** The page that opens where no file is given. */
    static final String WELCOME = "worksheets/welcome" + WorksheetFile.EXTENSION;

    static final String FIRST_STEPS = "worksheets/first-steps" + WorksheetFile.EXTENSION;

    private static final String FOLDER = "/rakeline/bundled/worksheets";

    private BundledPages() {}

    /**
     * One of them.
     *
     * @param name as in {@code worksheets/welcome.rakeline}
     */
    record Entry(String name, String title, Optional<Worksheet.Audience> audience) {}

    /** Reads one whole. */
    static Worksheet read(String name) {
        return WorksheetFile.read(Roots.bundled().read(name, WorksheetFile.LIMIT_BYTES), name);
    }

    /** All of them, by title. */
    static List<Entry> list() {
        URL folder = BundledPages.class.getResource(FOLDER);
        if (folder == null) {
            return List.of();
        }
        return names(folder).stream()
                .map(BundledPages::entry)
                .sorted(Comparator.comparing(Entry::title))
                .toList();
    }

    private static Entry entry(String name) {
        Worksheet page = read(name);
        return new Entry(name, page.title(), page.audience());
    }

    private static List<String> names(URL folder) {
        try {
            URI uri = folder.toURI();
            if (!"jar".equals(uri.getScheme())) {
                return names(Path.of(uri));
            }
            try (FileSystem jar = FileSystems.newFileSystem(uri, Map.of())) {
                return names(jar.getPath(FOLDER));
            }
        } catch (IOException | URISyntaxException e) {
            throw new Refusal("The bundled worksheets cannot be listed: " + e.getMessage() + ".", e);
        }
    }

    private static List<String> names(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString())
                    .filter(name -> name.endsWith(WorksheetFile.EXTENSION))
                    .map(name -> "worksheets/" + name)
                    .toList();
        }
    }
}
