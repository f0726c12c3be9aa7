package rakeline.shell.rack;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rakeline.desk.RackView;
import rakeline.geometry.Bike;
import rakeline.worksheet.Row;
import rakeline.worksheet.Worksheet;

/** What is to be done after something has happened to the rack. */
sealed interface RackEffect {
    /** What works on one bike's file; one at a time. */
    sealed interface OnFile extends RackEffect {
        String id();

        /** What the file holds afterwards. */
        Bike content();
    }

    /** Writes a bike to its file, unless that holds something else than is known. */
    record Write(String id, RackBike.Filed filed, Bike bike) implements OnFile {
        @Override
        public Bike content() {
            return bike;
        }
    }

    /**
     * Writes a bike to a new file in the user's folder.
     *
     * @param fileName to be taken, with a number behind it where it is taken already
     * @param former as it may have been written before the program was ended, the answer unheard
     */
    record Create(String id, String fileName, Bike bike, Optional<Bike> former, RackState.Page page) implements OnFile {
        @Override
        public Bike content() {
            return bike;
        }
    }

    /** Gives a file another name in its folder, with a number behind it where that is taken already. */
    record Move(String id, RackBike.Filed filed, String fileName) implements OnFile {
        @Override
        public Bike content() {
            return filed.stored().orElseThrow();
        }
    }

    /** Reads bikes. */
    record Read(int number, List<Source> sources, RackState.Page page) implements RackEffect {
        /**
         * What to read.
         *
         * @param path as a page names it; empty for a file that it does not name
         * @param known where it was last; read where the path leads nowhere
         */
        record Source(String path, Optional<Path> known) {}

        /**
         * What was read.
         *
         * @param isElsewhere whether the path leads nowhere, and the file that it led to was read
         */
        record Answer(Source source, RackBike.Filed filed, boolean isElsewhere) {}
    }

    /** Keeps how the rack is, and what is not in a file yet, for the next start. */
    record Keep(RackView view) implements RackEffect {}

    /** Changes the page, as one step of it. */
    record EditPage(String words, PageEdit edit) implements RackEffect {}

    /** Puts one sentence before the person. */
    record Tell(String sentence) implements RackEffect {}

    /** Says in a few words what was done. */
    record Say(String words) implements RackEffect {}

    /** A change of the page's rack. */
    sealed interface PageEdit {
        List<String> rack(List<String> before);

        default Worksheet page(Worksheet before) {
            return before.withRack(rack(before.rack()));
        }
    }

    /** Names bikes behind those that are named. */
    record Names(List<String> paths) implements PageEdit {
        @Override
        public List<String> rack(List<String> before) {
            return Stream.concat(before.stream(), paths.stream()).distinct().toList();
        }
    }

    /** Names bikes no more. */
    record Drops(List<String> paths) implements PageEdit {
        @Override
        public List<String> rack(List<String> before) {
            return before.stream().filter(path -> !paths.contains(path)).toList();
        }
    }

    /** Names another file in the place of one: on the rack, in pickers and in the words of snippets. */
    record Renames(String from, String to) implements PageEdit {
        @Override
        public List<String> rack(List<String> before) {
            return before.stream().map(this::path).distinct().toList();
        }

        private String path(String before) {
            return before.equals(from) ? to : before;
        }

        @Override
        public Worksheet page(Worksheet before) {
            Worksheet page = PageEdit.super.page(before);
            for (var pick : before.picks().entrySet()) {
                page = page.withPick(pick.getKey(), path(pick.getValue()));
            }
            return page.withRows(before.rows().stream().map(this::row).toList());
        }

        private Row row(Row row) {
            return row instanceof Row.Snippet
                    ? row.withText(row.text().replace("\"" + from + "\"", "\"" + to + "\""))
                    : row;
        }
    }
}
