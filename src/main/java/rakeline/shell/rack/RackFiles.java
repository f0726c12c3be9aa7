package rakeline.shell.rack;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
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

/**
 * The files that bikes stand in. Off the event thread.
 *
 * @param folders where paths are looked for, the page's own first; new bikes go into the last, the user's own
 */
record RackFiles(SafeFile disk, List<Path> folders) {
    RackFiles {
        folders = List.copyOf(folders);
    }

    /** How a write went. */
    sealed interface Written {
        /** It stands in its file. */
        record Done(Place place) implements Written {}

        /** Nothing was written, since another program has changed the file; this is what it holds. */
        record Changed(RackRow theirs) implements Written {}
    }

    /** The bikes of paths, each or why it cannot be read. */
    List<RackRow> read(List<String> paths) {
        return paths.stream().map(this::read).toList();
    }

    private RackRow read(String path) {
        AtomicReference<Optional<Path>> looked = new AtomicReference<>(Optional.empty());
        try {
            byte[] bytes = new Roots(folders, Roots.Links.REFUSED, file -> looked.set(Optional.of(file)))
                    .read(path, BikeFile.SIZE_LIMIT);
            Optional<Place> place = looked.get().filter(disk::exists).map(file -> new Place(file, Stamp.of(bytes)));
            return RackRow.of(path, place, BikeFile.read(bytes, path));
        } catch (Refusal refusal) {
            return RackRow.unread(path, refusal.getMessage());
        }
    }

    /** Writes a bike to its own file, unless another program has changed that. */
    Written write(RackRow row) {
        Place place = row.place().orElseThrow();
        if (disk.isChanged(place.file(), place.stamp())) {
            return new Written.Changed(read(row.path()));
        }
        byte[] bytes = BikeWriter.write(row.bike().orElseThrow());
        return new Written.Done(new Place(place.file(), disk.writeOwn(place.file(), bytes)));
    }

    private Path home() {
        return folders.get(folders.size() - 1);
    }

    /** Writes a bike to a new file in the user's folder, under this name or with a number behind it. */
    RackRow create(String fileName, Bike bike) {
        Path folder = home();
        Path file = free(folder, fileName);
        Place place = new Place(file, disk.writeOwn(file, BikeWriter.write(bike)));
        return RackRow.of(name(folder, file), Optional.of(place), bike);
    }

    private static String name(Path folder, Path file) {
        return folder.relativize(file).toString().replace('\\', '/');
    }

    /** Writes several, in order. */
    List<RackRow> create(List<Bike> bikes) {
        List<RackRow> created = new ArrayList<>();
        bikes.forEach(bike -> created.add(create(BikeWriter.fileName(bike.name()), bike)));
        return created;
    }

    private Path free(Path folder, String fileName) {
        String stem = fileName.substring(0, fileName.length() - BikeFile.ENDING.length());
        Path file = folder.resolve(fileName);
        for (int i = 2; disk.exists(file); i++) {
            file = folder.resolve(stem + "-" + i + BikeFile.ENDING);
        }
        return file;
    }

    /** Takes a file in: by its path where it lies in one of the folders, else as a copy in the last. */
    RackRow take(Path file) {
        Path whole = file.toAbsolutePath().normalize();
        Optional<Path> known = folders.stream()
                .map(folder -> folder.toAbsolutePath().normalize())
                .filter(whole::startsWith)
                .findFirst();
        if (known.isPresent()) {
            return read(name(known.get(), whole));
        }
        Bike bike = BikeFile.read(disk.read(whole, (int) BikeFile.SIZE_LIMIT), whole.toString());
        return create(BikeWriter.fileName(bike.name()), bike);
    }

    /**
     * What the files of a kind hold that can be chosen, in order.
     *
     * @param troubles why others cannot be read, a sentence each
     */
    record Offered<T>(List<T> things, List<String> troubles) {
        Offered {
            things = List.copyOf(things);
            troubles = List.copyOf(troubles);
        }
    }

    /** Those in the folders, then those that come with the program; what cannot be read hides no other. */
    <T> Offered<T> offered(Bundled kind, long limit, BiFunction<byte[], String, T> reader) {
        Roots roots = new Roots(folders);
        List<T> things = new ArrayList<>();
        List<String> troubles = new ArrayList<>();
        for (String path : roots.paths(kind)) {
            try {
                things.add(reader.apply(roots.read(path, limit), path));
            } catch (Refusal refusal) {
                troubles.add(refusal.getMessage());
            }
        }
        return new Offered<>(things, troubles);
    }
}
