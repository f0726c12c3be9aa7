package rakeline.shell.rack;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import rakeline.shell.page.Bench;
import rakeline.shell.page.PageModel;

/** Reads the bikes of the page's rack, whenever the page names others or stands elsewhere, and when it is asked to. */
final class RackLoader {
    /** What the loader tells the rack. */
    interface Told {
        /**
         * Other bikes are about to take the place of these.
         *
         * @param elsewhere whether paths lead to other files from now on
         * @param paths that stay
         */
        void parting(boolean elsewhere, List<String> paths);

        /** These were read. */
        void read(List<RackRow> rows);
    }

    /** What is read. */
    private record Source(List<String> paths, List<Path> folders) {}

    private final Bench bench;
    private final Host host;
    private final Told told;
    private Source source = new Source(List.of(), List.of());

    RackLoader(Bench bench, Host host, Told told) {
        this.bench = bench;
        this.host = host;
        this.told = told;
    }

    /** Where the page's bikes are looked for. */
    RackFiles files() {
        return new RackFiles(host.disk(), source.folders());
    }

    void follow(PageModel now) {
        Source wanted = new Source(
                now.page().rack(),
                Stream.concat(now.origin().folder().stream(), Stream.of(host.userFolder()))
                        .toList());
        if (!wanted.equals(source)) {
            boolean elsewhere = !wanted.folders().equals(source.folders());
            source = wanted;
            told.parting(elsewhere, wanted.paths());
            load();
        }
    }

    void again() {
        if (!source.paths().isEmpty()) {
            load();
        }
    }

    /** The page is about to name another path in the place of one, for a bike that is known here already. */
    void moved(String from, String to) {
        source = new Source(
                source.paths().stream()
                        .map(path -> path.equals(from) ? to : path)
                        .toList(),
                source.folders());
    }

    private void load() {
        Source as = source;
        RackFiles files = files();
        host.aside(
                () -> files.read(as.paths()),
                rows -> {
                    if (as.equals(source)) {
                        told.read(rows);
                    }
                },
                bench::notice);
    }
}
