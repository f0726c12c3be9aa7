package rakeline.shell.rack;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import rakeline.catalogue.BikeWriter;
import rakeline.geometry.Bike;
import rakeline.quantity.Refusal;
import rakeline.shell.page.Bench;

/**
 * Keeps bikes in their files: one write at a time, again where a bike was changed meanwhile. A bike that comes with the
 * program is copied first, and the page reads the copy from then on; one that has just become whole gets a file; what
 * another program wrote stays, with what was typed put on top of it.
 */
final class RackKeeper {
    /** What the keeper tells the rack. */
    interface Told {
        RackModel model();

        /** A bike stands in a file of its own by now. */
        void placed(String id, RackRow now);

        /** Another program wrote this; it counts, with what was typed since put on top. */
        void overtaken(String id, RackRow now);
    }

    private final Bench bench;
    private final Host host;
    private final Supplier<RackFiles> files;
    private final Told told;
    private final Map<String, Bike> stored = new HashMap<>();
    private final Map<String, List<UnaryOperator<RackRow>>> edits = new HashMap<>();
    private final Deque<RackRow> leaving = new ArrayDeque<>();
    private boolean writing;

    RackKeeper(Bench bench, Host host, Supplier<RackFiles> files, Told told) {
        this.bench = bench;
        this.host = host;
        this.files = files;
        this.told = told;
    }

    /** These bikes stand so in their files. */
    void read(List<RackRow> rows) {
        stored.clear();
        rows.forEach(row -> row.bike().ifPresent(bike -> stored.put(row.id(), bike)));
    }

    /** Remembers what was done to a bike, until it stands in its file. */
    void edited(String id, UnaryOperator<RackRow> edit) {
        edits.computeIfAbsent(id, any -> new ArrayList<>()).add(edit);
    }

    /** Whether a bike stands otherwise than its file. */
    boolean isUnsaved(RackRow row) {
        return row.bike().filter(bike -> !bike.equals(stored.get(row.id()))).isPresent();
    }

    boolean isAtWork() {
        return writing;
    }

    /** These bikes have left the rack: what is not in their files is written all the same. */
    void leave(List<RackRow> rows) {
        rows.stream().filter(this::isUnsaved).forEach(leaving::add);
        save();
    }

    /** Writes what is not in its file. */
    void save() {
        if (!writing && !leaving.isEmpty()) {
            writeLast(leaving.remove());
        } else if (!writing) {
            told.model().rows().stream().filter(this::isUnsaved).findFirst().ifPresent(this::write);
        }
    }

    private void writeLast(RackRow row) {
        writing = true;
        RackFiles now = files.get();
        host.aside(
                () -> row.place().isPresent()
                        ? now.write(row)
                        : new RackFiles.Written.Done(
                                now.create(baseName(row.path()), row.bike().orElseThrow())
                                        .place()
                                        .orElseThrow()),
                written -> {
                    writing = false;
                    if (written instanceof RackFiles.Written.Changed) {
                        bench.notice("Another program has changed " + row.name()
                                + "; what you typed there last is not written.");
                    }
                    save();
                },
                this::refused);
    }

    private void write(RackRow row) {
        writing = true;
        RackFiles now = files.get();
        if (row.place().isPresent()) {
            host.aside(() -> now.write(row), written -> wrote(row, written), this::refused);
        } else {
            String name = row.path().isEmpty() ? BikeWriter.fileName(row.name()) : baseName(row.path());
            Bike bike = row.bike().orElseThrow();
            host.aside(() -> now.create(name, bike), created -> created(row, created), this::refused);
        }
    }

    private static String baseName(String path) {
        return path.substring(path.lastIndexOf('/') + 1);
    }

    private void refused(String sentence) {
        writing = false;
        bench.notice(sentence + " What you typed stays on the rack and is written with the next change.");
    }

    private void wrote(RackRow row, RackFiles.Written written) {
        writing = false;
        if (written instanceof RackFiles.Written.Done done) {
            settle(row, row.bike().orElseThrow());
            told.model().row(row.id()).ifPresent(now -> told.placed(row.id(), now.at(now.path(), done.place())));
            bench.say(row.name() + " saved in " + done.place().file().getFileName());
        } else if (written instanceof RackFiles.Written.Changed changed) {
            overtaken(row, changed.theirs());
        }
        save();
    }

    /** What was done after the write began is still to be written. */
    private void settle(RackRow written, Bike bike) {
        stored.put(written.id(), bike);
        if (told.model().row(written.id()).filter(this::isUnsaved).isEmpty()) {
            edits.remove(written.id());
        }
    }

    private void overtaken(RackRow row, RackRow theirs) {
        theirs.bike().ifPresent(bike -> stored.put(row.id(), bike));
        List<UnaryOperator<RackRow>> again = edits.getOrDefault(row.id(), List.of());
        edits.remove(row.id());
        try {
            RackRow merged = theirs;
            for (UnaryOperator<RackRow> edit : again) {
                merged = edit.apply(merged);
            }
            told.overtaken(row.id(), merged);
            bench.notice("Another program has changed " + row.name()
                    + "; its numbers were read again, and what you typed was put on top of them.");
        } catch (Refusal refusal) {
            told.overtaken(row.id(), theirs);
            bench.notice("Another program has changed " + row.name()
                    + "; its numbers were read again, and your last change was not: " + refusal.getMessage());
        }
    }

    private void created(RackRow row, RackRow created) {
        writing = false;
        edits.remove(row.id());
        stored.put(created.id(), created.bike().orElseThrow());
        told.model()
                .row(row.id())
                .ifPresent(now -> told.placed(
                        row.id(), now.at(created.path(), created.place().orElseThrow())));
        if (row.path().isEmpty()) {
            bench.act(created.name() + " put on the rack", page -> page.withRack(and(page.rack(), created.path())));
        } else {
            bench.act(row.name() + " copied", page -> Repointed.of(page, row.path(), created.path()));
            bench.notice(row.name() + " comes with the program and is read only; this page reads your copy now: "
                    + created.place().orElseThrow().file());
        }
        save();
    }

    private static List<String> and(List<String> paths, String path) {
        List<String> more = new ArrayList<>(paths);
        more.add(path);
        return more;
    }
}
