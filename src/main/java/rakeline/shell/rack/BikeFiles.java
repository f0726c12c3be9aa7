package rakeline.shell.rack;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.BiFunction;
import rakeline.catalogue.BikeFile;
import rakeline.catalogue.BikeWriter;
import rakeline.catalogue.Bundled;
import rakeline.catalogue.Roots;
import rakeline.desk.SafeFile;
import rakeline.desk.Stamp;
import rakeline.geometry.Bike;
import rakeline.quantity.Refusal;
import rakeline.shell.rack.RackEffect.Read.Answer;
import rakeline.shell.rack.RackEffect.Read.Source;

/**
 * The files that bikes stand in. Off the event thread.
 *
 * @param folders where paths are looked for, the page's own first; new bikes go into the last, the user's own
 */
record BikeFiles(SafeFile disk, List<Path> folders) {
    BikeFiles {
        folders = List.copyOf(folders);
    }

    /** The bikes of sources, each or why it cannot be read. */
    List<Answer> read(List<Source> sources) {
        return sources.stream().map(this::read).toList();
    }

    private Answer read(Source source) {
        if (source.path().isEmpty()) {
            Path file = source.known().orElseThrow();
            return new Answer(source, own(file, file.toString()), false);
        }
        RackBike.Filed filed = read(source.path());
        Optional<RackBike.Filed> known = filed.trouble().isEmpty()
                ? Optional.empty()
                : source.known()
                        .filter(file -> disk.exists(file) && !isInside(file))
                        .map(file -> own(file, file.toString()));
        return new Answer(source, known.orElse(filed), known.isPresent());
    }

    private boolean isInside(Path file) {
        return folders.stream()
                .map(folder -> folder.toAbsolutePath().normalize())
                .anyMatch(file.toAbsolutePath().normalize()::startsWith);
    }

    /** What a path leads to. */
    RackBike.Filed read(String path) {
        AtomicReference<Optional<Path>> looked = new AtomicReference<>(Optional.empty());
        try {
            byte[] bytes = new Roots(folders, Roots.Links.REFUSED, file -> looked.set(Optional.of(file)))
                    .read(path, BikeFile.SIZE_LIMIT);
            return filed(path, looked.get().filter(disk::exists), bytes);
        } catch (Refusal refusal) {
            return RackBike.Filed.unread(path, Labels.in(refusal.getMessage()));
        }
    }

    private RackBike.Filed own(Path file, String path) {
        try {
            return filed(path, Optional.of(file), disk.read(file, (int) BikeFile.SIZE_LIMIT));
        } catch (Refusal refusal) {
            return RackBike.Filed.unread(path, Labels.in(refusal.getMessage()));
        }
    }

    private static RackBike.Filed filed(String path, Optional<Path> file, byte[] bytes) {
        return new RackBike.Filed(
                path,
                file.map(own -> new RackBike.Place(own, Stamp.of(bytes))),
                Optional.of(BikeFile.read(bytes, path)),
                "",
                "");
    }

    /** Does what is to be done to a file; what has come of it. */
    RackEvent carryOut(RackEffect.OnFile effect) {
        if (effect instanceof RackEffect.Write write) {
            return write(write);
        }
        return effect instanceof RackEffect.Create create
                ? new RackEvent.WasCreated(create.id(), create.fileName(), create(create))
                : move((RackEffect.Move) effect);
    }

    /** Writes a bike to its own file, unless another program has changed that. */
    private RackEvent write(RackEffect.Write write) {
        RackBike.Place place = write.filed().place().orElseThrow();
        if (disk.isChanged(place.file(), place.stamp())) {
            return new RackEvent.WasOvertaken(
                    write.id(), own(place.file(), write.filed().path()));
        }
        return new RackEvent.WasWritten(write.id(), written(write.filed().path(), place.file(), write.bike()));
    }

    private RackBike.Filed written(String path, Path file, Bike bike) {
        Stamp stamp = disk.writeOwn(file, BikeWriter.write(bike));
        return new RackBike.Filed(path, Optional.of(new RackBike.Place(file, stamp)), Optional.of(bike), "", "");
    }

    private Path home() {
        return folders.get(folders.size() - 1);
    }

    /** A file that holds this very bike already is it: the program was ended right after it was written. */
    private RackBike.Filed create(RackEffect.Create create) {
        Path wanted = home().resolve(create.fileName());
        if (holds(wanted, create.bike())) {
            return own(wanted, name(home(), wanted));
        }
        Optional<Path> former = create.former()
                .map(bike -> Map.entry(home().resolve(BikeWriter.fileName(bike.name())), bike))
                .filter(entry -> holds(entry.getKey(), entry.getValue()))
                .map(Map.Entry::getKey);
        return former.map(file -> written(name(home(), file), file, create.bike()))
                .orElseGet(() -> create(create.fileName(), create.bike()));
    }

    private boolean holds(Path file, Bike bike) {
        return disk.exists(file) && !disk.isChanged(file, Stamp.of(BikeWriter.write(bike)));
    }

    /** Writes a bike to a new file in the user's folder, under this name or with a number behind it. */
    RackBike.Filed create(String fileName, Bike bike) {
        Path file = free(home(), fileName);
        return written(name(home(), file), file, bike);
    }

    private RackEvent move(RackEffect.Move move) {
        RackBike.Place place = move.filed().place().orElseThrow();
        Path file = free(place.file().toAbsolutePath().getParent(), move.fileName());
        disk.rename(place.file(), file);
        return new RackEvent.WasMoved(move.id(), move.fileName(), new RackBike.Place(file, place.stamp()));
    }

    private static String name(Path folder, Path file) {
        return folder.relativize(file).toString().replace('\\', '/');
    }

    private Path free(Path folder, String fileName) {
        String stem = fileName.substring(0, fileName.length() - BikeFile.ENDING.length());
        Path file = folder.resolve(fileName);
        for (int i = 2; disk.exists(file); i++) {
            file = folder.resolve(stem + "-" + i + BikeFile.ENDING);
        }
        return file;
    }

    /** Takes a file in: its path where it lies in one of the folders, else that of a copy in the last. */
    String take(Path file) {
        Path whole = file.toAbsolutePath().normalize();
        return folders.stream()
                .map(folder -> folder.toAbsolutePath().normalize())
                .filter(whole::startsWith)
                .findFirst()
                .map(folder -> name(folder, whole))
                .orElseGet(() -> copied(whole));
    }

    private String copied(Path file) {
        Bike bike = BikeFile.read(disk.read(file, (int) BikeFile.SIZE_LIMIT), file.toString());
        return create(BikeWriter.fileName(bike.name()), bike).path();
    }

    /**
     * Something that can be chosen, by the path of its file.
     *
     * @param path as pages name it
     */
    record Choosable<T>(String path, T thing) {}

    /**
     * What the files of a kind hold that can be chosen, in order.
     *
     * @param troubles why others cannot be read, a sentence each
     */
    record Offered<T>(List<Choosable<T>> things, List<String> troubles) {
        Offered {
            things = List.copyOf(things);
            troubles = List.copyOf(troubles);
        }
    }

    /** Those in the folders, then those that come with the program; what cannot be read hides no other. */
    <T> Offered<T> offered(Bundled kind, long limit, BiFunction<byte[], String, T> reader) {
        Roots roots = new Roots(folders);
        List<Choosable<T>> things = new ArrayList<>();
        List<String> troubles = new ArrayList<>();
        for (String path : roots.paths(kind)) {
            try {
                things.add(new Choosable<>(path, reader.apply(roots.read(path, limit), path)));
            } catch (Refusal refusal) {
                troubles.add(refusal.getMessage());
            }
        }
        return new Offered<>(things, troubles);
    }
}
