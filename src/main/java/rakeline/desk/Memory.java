package rakeline.desk;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rakeline.desk.Preferences.Theme;
import rakeline.json.Piece;

/** The small files that the program keeps, each in its place. */
public final class Memory {
    private Memory() {}

    public static Kept<Preferences> preferences(SafeFile disk, Places places) {
        Path file = places.preferences().resolve("preferences.json");
        return new Kept<>(disk, file, Preferences.standard(), Memory::readPreferences, Memory::writePreferences);
    }

    public static Kept<Recents> recents(SafeFile disk, Places places) {
        Path file = places.state().resolve("recent.json");
        return new Kept<>(disk, file, Recents.none(), Memory::readRecents, Memory::writeRecents);
    }

    /** Where the window stood last. */
    public static Kept<Bounds> bounds(SafeFile disk, Places places) {
        Path file = places.state().resolve("window.json");
        return new Kept<>(disk, file, Bounds.first(), Memory::readBounds, Memory::writeBounds);
    }

    /** How the rack is looked at. */
    public static Kept<RackView> rack(SafeFile disk, Places places) {
        Path file = places.state().resolve("rack.json");
        return new Kept<>(disk, file, RackView.first(), Memory::readRack, Memory::writeRack);
    }

    /** What may run. */
    public static Kept<Trust> trust(SafeFile disk, Places places) {
        Path file = places.state().resolve("trust.json");
        return new Kept<>(disk, file, Trust.none(), Memory::readTrust, Memory::writeTrust);
    }

    private static Preferences readPreferences(Piece piece) {
        return new Preferences(
                piece.member("theme").oneOf(Theme.values()),
                piece.member("typePercent").whole(),
                piece.member("workerMegabytes").whole(),
                piece.member("timeLimitSeconds").whole(),
                Optional.ofNullable(piece.members().get("folder")).map(Piece::text),
                Optional.ofNullable(piece.members().get("followsLinks"))
                        .map(Piece::flag)
                        .orElse(false));
    }

    private static Map<String, Object> writePreferences(Preferences preferences) {
        Map<String, Object> keys = new LinkedHashMap<>();
        keys.put("theme", Piece.word(preferences.theme()));
        keys.put("typePercent", preferences.typePercent());
        keys.put("workerMegabytes", preferences.workerMegabytes());
        keys.put("timeLimitSeconds", preferences.timeLimitSeconds());
        preferences.folder().ifPresent(folder -> keys.put("folder", folder));
        if (preferences.followsLinks()) {
            keys.put("followsLinks", true);
        }
        return keys;
    }

    private static Trust readTrust(Piece piece) {
        return new Trust(piece.member("code").each(code -> new Stamp(code.text())));
    }

    private static Map<String, Object> writeTrust(Trust trust) {
        return Map.of("code", trust.code().stream().map(Stamp::sha256).toList());
    }

    private static Recents readRecents(Piece piece) {
        return new Recents(piece.member("files").each(Memory::path));
    }

    private static Path path(Piece piece) {
        try {
            return Path.of(piece.text());
        } catch (InvalidPathException e) {
            throw piece.unlike("a path of this system");
        }
    }

    private static Map<String, Object> writeRecents(Recents recents) {
        return Map.of("files", recents.files().stream().map(Path::toString).toList());
    }

    private static Bounds readBounds(Piece piece) {
        return new Bounds(
                piece.member("x").whole(),
                piece.member("y").whole(),
                piece.member("width").whole(),
                piece.member("height").whole(),
                piece.member("fills").flag());
    }

    private static Map<String, Object> writeBounds(Bounds bounds) {
        Map<String, Object> keys = new LinkedHashMap<>();
        keys.put("x", bounds.x());
        keys.put("y", bounds.y());
        keys.put("width", bounds.width());
        keys.put("height", bounds.height());
        keys.put("fills", bounds.fills());
        return keys;
    }

    private static RackView readRack(Piece piece) {
        return new RackView(
                piece.member("columns").each(Piece::text),
                piece.member("lengths").text(),
                piece.member("open").flag(),
                optional(piece, "chosen").map(Memory::readChosen).orElseGet(RackView.Chosen::first),
                optional(piece, "bikes").map(bikes -> bikes.each(Piece::text)).orElse(List.of()),
                piece.member("unfinished").each(Memory::readUnfinished));
    }

    /** What a file of an earlier version does not have. */
    private static Optional<Piece> optional(Piece piece, String name) {
        return Optional.ofNullable(piece.members().get(name));
    }

    private static RackView.Chosen readChosen(Piece piece) {
        return new RackView.Chosen(
                piece.member("rider").text(),
                piece.member("hands").text(),
                piece.member("contact").text(),
                piece.member("parts").text(),
                piece.member("at").text(),
                piece.member("onlyColumns").flag());
    }

    private static RackView.Unfinished readUnfinished(Piece piece) {
        Map<String, Double> numbers = new LinkedHashMap<>();
        piece.member("numbers").members().forEach((key, number) -> numbers.put(key, number.number()));
        Map<String, String> open = new LinkedHashMap<>();
        optional(piece, "cells").ifPresent(cells -> cells.members().forEach((key, text) -> open.put(key, text.text())));
        return new RackView.Unfinished(
                piece.member("file").text(),
                piece.member("name").text(),
                numbers,
                open,
                optional(piece, "written").map(Piece::text).orElse(""),
                optional(piece, "before")
                        .map(before -> before.each(Piece::text))
                        .orElse(List.of()));
    }

    private static Map<String, Object> writeRack(RackView rack) {
        Map<String, Object> keys = new LinkedHashMap<>();
        keys.put("columns", rack.columns());
        keys.put("lengths", rack.lengths());
        keys.put("open", rack.isOpen());
        keys.put("chosen", write(rack.chosen()));
        keys.put("bikes", rack.bikes());
        keys.put("unfinished", rack.unfinished().stream().map(Memory::write).toList());
        return keys;
    }

    private static Map<String, Object> write(RackView.Chosen chosen) {
        return Map.of(
                "rider", chosen.rider(),
                "hands", chosen.hands(),
                "contact", chosen.contact(),
                "parts", chosen.parts(),
                "at", chosen.at(),
                "onlyColumns", chosen.onlyColumns());
    }

    private static Map<String, Object> write(RackView.Unfinished bike) {
        Map<String, Object> keys = new LinkedHashMap<>();
        keys.put("file", bike.file());
        keys.put("name", bike.name());
        keys.put("numbers", bike.numbers());
        keys.put("cells", bike.open());
        keys.put("written", bike.written());
        keys.put("before", bike.before());
        return keys;
    }
}
