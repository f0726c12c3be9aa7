package rakeline.shell;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import rakeline.catalogue.Roots;
import rakeline.worksheet.Worksheet;
import rakeline.worksheet.WorksheetFile;

/** The worksheets that come with the program. */
final class BundledPages {
    /** The page that opens where no file is given. */
    static final String WELCOME = "worksheets/welcome" + WorksheetFile.EXTENSION;

    static final String FIRST_STEPS = "worksheets/first-steps" + WorksheetFile.EXTENSION;

    private static final String FOLDER = "worksheets";

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
        return Roots.bundledIn(FOLDER, WorksheetFile.EXTENSION).stream()
                .map(BundledPages::entry)
                .sorted(Comparator.comparing(Entry::title))
                .toList();
    }

    private static Entry entry(String name) {
        Worksheet page = read(name);
        return new Entry(name, page.title(), page.audience());
    }
}
