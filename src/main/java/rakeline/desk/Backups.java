package rakeline.desk;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import rakeline.worksheet.Worksheet;
import rakeline.worksheet.WorksheetFile;

/** The versions of a page that later ones have replaced, in the state folder, the last {@value #KEPT} of each file. */
public final class Backups {
    public static final int KEPT = 5;

    private static final DateTimeFormatter NAME = DateTimeFormatter.ofPattern(
                    "uuuuMMdd'T'HHmmss.SSSSSSSSS", Locale.ROOT)
            .withZone(ZoneOffset.UTC);

    private final SafeFile disk;
    private final Path folder;

    /** In the state folder; nothing is created until there is something to keep. */
    public Backups(SafeFile disk, Places places) {
        this.disk = disk;
        folder = places.state().resolve("backups");
    }

    /**
     * One version.
     *
     * @param until when another took its place
     */
    public record Version(Path file, Instant until) {}

    /**
     * Keeps a version, unless it equals the one kept last, and lets go of the oldest beyond {@value #KEPT}.
     *
     * @param of the page's file; empty for pages that were never saved
     */
    public void keep(Optional<Path> of, byte[] bytes, Instant now) {
        List<Version> before = versions(of);
        if (before.isEmpty() || disk.isChanged(before.get(0).file(), Stamp.of(bytes))) {
            Path file = folder(of).resolve(NAME.format(now) + WorksheetFile.EXTENSION);
            disk.writeOwn(file, bytes);
            versions(of).stream().skip(KEPT).forEach(old -> disk.delete(old.file()));
        }
    }

    /** The versions kept of a file, the latest first. */
    public List<Version> versions(Optional<Path> of) {
        return disk.list(folder(of), WorksheetFile.EXTENSION).stream()
                .flatMap(Backups::version)
                .sorted(Comparator.comparing(Version::until).reversed())
                .toList();
    }

    private static Stream<Version> version(Path file) {
        String name = file.getFileName().toString();
        String time = name.substring(0, name.length() - WorksheetFile.EXTENSION.length());
        try {
            return Stream.of(new Version(file, NAME.parse(time, Instant::from)));
        } catch (DateTimeParseException notOurs) {
            return Stream.of();
        }
    }

    /** What a version holds. */
    public Worksheet read(Version version) {
        return PageFile.open(disk, version.file()).page();
    }

    private Path folder(Optional<Path> of) {
        return folder.resolve(of.map(file -> Stamp.of(
                                file.toAbsolutePath().normalize().toString().getBytes(StandardCharsets.UTF_8))
                        .sha256()
                        .substring(0, 24))
                .orElse("never-saved"));
    }
}
