package rakeline.fuzz;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.BiFunction;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rakeline.catalogue.BikeFile;
import rakeline.catalogue.DynamicsFile;
import rakeline.catalogue.PartsFile;
import rakeline.catalogue.RiderFile;
import rakeline.catalogue.chart.ChartFile;
import rakeline.catalogue.chart.ChartImport;
import rakeline.quantity.Refusal;
import rakeline.worksheet.WorksheetFile;

/**
 * Whatever stands in a file, its reader reads it or refuses it in one sentence. {@code -Dfuzz.seeds=20000} tries that
 * many changed files of each kind.
 */
class FileReadersTest {
    private static final int SEEDS = Integer.getInteger("fuzz.seeds", 300);

    /**
     * A kind of file.
     *
     * @param examples the folder of files that are changed
     * @param read takes bytes and the file's name
     */
    private record Reader(String name, Path examples, String ending, BiFunction<byte[], String, Object> read) {
        @Override
        public String toString() {
            return name;
        }

        List<byte[]> originals() throws IOException {
            try (Stream<Path> files = Files.walk(examples)) {
                List<Path> found = files.filter(file -> file.toString().endsWith(ending))
                        .sorted()
                        .toList();
                return found.stream().map(FileReadersTest::bytes).toList();
            }
        }
    }

    /** A reader joins by a line here. */
    static Stream<Reader> readers() {
        return Stream.of(
                new Reader("worksheets", Path.of("worksheets"), ".rakeline", WorksheetFile::read),
                new Reader("bikes", Path.of("demo-data"), ".bike.json", BikeFile::read),
                new Reader("riders", Path.of("demo-data"), ".rider.json", RiderFile::read),
                new Reader("parts", Path.of("demo-data"), ".parts.json", PartsFile::read),
                new Reader("dynamics", Path.of("demo-data"), ".dynamics.json", DynamicsFile::read),
                new Reader("charts", Path.of("src/test/resources/rakeline/fuzz"), ".csv", FileReadersTest::chart));
    }

    private static ChartImport chart(byte[] bytes, String file) {
        return ChartFile.read(bytes, file, new ChartImport.Wanted("maker", "", Map.of()));
    }

    private static byte[] bytes(Path file) {
        try {
            return Files.readAllBytes(file);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    @ParameterizedTest
    @MethodSource("readers")
    void eachFileIsReadOrRefused(Reader reader) throws IOException {
        List<byte[]> originals = reader.originals();
        Map<String, Integer> ends = new TreeMap<>();
        for (int seed = 1; seed <= SEEDS; seed++) {
            byte[] changed = new Mutation(seed).of(originals.get(seed % originals.size()));
            ends.merge(end(reader, changed, seed), 1, Integer::sum);
        }
        assertThat(ends).containsKeys("read", "refused");
    }

    @ParameterizedTest
    @MethodSource("readers")
    void aFileOfVeryManyValuesIsRefused(Reader reader) {
        byte[] many = ("[" + "1,".repeat(1_500_000) + "1]").getBytes(java.nio.charset.StandardCharsets.UTF_8);
        assertThat(end(reader, many, 0)).isEqualTo("refused");
    }

    private static String end(Reader reader, byte[] changed, int seed) {
        try {
            Object read = reader.read().apply(changed, "the-file");
            assertThat(read).isNotNull();
            return "read";
        } catch (Refusal refusal) {
            assertThat(refusal.getMessage())
                    .as("seed " + seed)
                    .startsWith("the-file")
                    .doesNotContain("\n");
            return "refused";
        } catch (RuntimeException | StackOverflowError other) {
            return fail("seed " + seed, other);
        }
    }
}
