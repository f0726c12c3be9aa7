package rakeline.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rakeline.worksheet.Row;
import rakeline.worksheet.Worksheet;

/**
 * A program that edits and saves is killed at a drawn moment: its file is whole, and no edit older than two seconds, and
 * the longest pause that the system or its disk took meanwhile, is lost. {@code -Dkill.rounds=100} kills a hundred of them.
 */
@Tag("process")
@Tag("slow")
class KillTest {
    private static final long PROMISED_MS = 2000;

    /** The longest pause that the editing process makes of its own accord. */
    private static final long DRAWN_PAUSE_MS = 40;

    @TempDir
    private Path home;

    /** Something that the killed program said: an edit, or the beginning or end of something that the disk did. */
    private record Said(String what, int number, long at) {
        static Said parse(String line) {
            String[] words = line.split(" ", 3);
            return new Said(words[0], Integer.parseInt(words[1]), Long.parseLong(words[2]));
        }
    }

    static LongStream seeds() {
        return LongStream.rangeClosed(1, Integer.getInteger("kill.rounds", 3));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void nothingOlderThanTwoSecondsIsLost(long seed) throws Exception {
        Path file = home.resolve("page.rakeline");
        SafeFile disk = SafeFile.onDisk();
        PageFile.create(disk, file, Worksheet.empty("Page").insert(0, Row.Snippet.of("r1", "0")));
        List<Said> said = saidUntilKilled(file, seed);
        List<Said> edits =
                said.stream().filter(each -> each.what().equals("edit")).toList();
        assertThat(edits).hasSizeGreaterThan(20);
        long killed = said.get(said.size() - 1).at();
        int back = broughtBack(disk, file);
        List<Said> lost = edits.stream().filter(edit -> edit.number() > back).toList();
        long oldest = lost.isEmpty() ? 0 : killed - lost.get(0).at();
        long pause = Math.max(longestPause(edits), longestOfDisk(said));
        report(seed, edits.size(), lost.size(), oldest, pause);
        assertThat(oldest).isLessThanOrEqualTo(PROMISED_MS + pause);
    }

    /** The highest number of an edit in the file and in the journals. */
    private int broughtBack(SafeFile disk, Path file) {
        int inFile = number(PageFile.open(disk, file).page());
        List<Recovery.Found> found = Recovery.find(disk, Places.in(home));
        assertThat(broken()).isEmpty();
        int inJournal = found.stream()
                .mapToInt(each -> number(each.draft().page()))
                .max()
                .orElse(0);
        found.forEach(Recovery.Found::discard);
        return Math.max(inFile, inJournal);
    }

    private List<Path> broken() {
        return SafeFile.onDisk().list(Journal.folder(Places.in(home)), ".broken");
    }

    private static int number(Worksheet page) {
        return page.dials().getOrDefault("edit", 0.0).intValue();
    }

    private static long longestPause(List<Said> edits) {
        long longest = 0;
        for (int i = 1; i < edits.size(); i++) {
            longest = Math.max(longest, edits.get(i).at() - edits.get(i - 1).at() - DRAWN_PAUSE_MS);
        }
        return longest;
    }

    /** What is begun and not ended was cut off by the kill. */
    private static long longestOfDisk(List<Said> said) {
        long killed = said.get(said.size() - 1).at();
        Map<Integer, Long> took = new HashMap<>();
        for (Said each : said) {
            switch (each.what()) {
                case "begin" -> took.put(each.number(), killed - each.at());
                case "end" -> took.merge(each.number(), killed - each.at(), (begun, ended) -> begun - ended);
                default -> {}
            }
        }
        return took.values().stream().mapToLong(Long::longValue).max().orElse(0);
    }

    /** Kills the program at the first word after a drawn time of 2.5 to 4 s. */
    private List<Said> saidUntilKilled(Path file, long seed) throws IOException, InterruptedException {
        long lifeMs = 2500L + new Random(seed).nextInt(1500);
        Process process = start(file, seed);
        List<Said> said = new ArrayList<>();
        try (BufferedReader lines = process.inputReader(StandardCharsets.UTF_8)) {
            for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                said.add(Said.parse(line));
                if (said.get(said.size() - 1).at() > said.get(0).at() + lifeMs) {
                    process.toHandle().destroyForcibly();
                }
            }
        }
        process.waitFor();
        return said;
    }

    private Process start(Path file, long seed) throws IOException {
        return new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Xmx128m",
                        "-XX:TieredStopAtLevel=1",
                        "-cp",
                        System.getProperty("java.class.path"),
                        EditingProcess.class.getName(),
                        home.toString(),
                        file.toString(),
                        String.valueOf(seed))
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
    }

    private static void report(long seed, int edits, int lost, long oldest, long pause) throws IOException {
        String wanted = System.getProperty("kill.report");
        if (wanted != null) {
            Files.writeString(
                    Path.of(wanted),
                    seed + "," + edits + "," + lost + "," + oldest + "," + pause + "\n",
                    StandardOpenOption.CREATE,
                    StandardOpenOption.APPEND);
        }
    }
}
