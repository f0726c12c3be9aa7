package rakeline.catalogue.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.Map;
import rakeline.geometry.Bike;
import rakeline.geometry.Setting;

/** Charts for tests. */
final class Charts {
    static final String FILE = "maker.csv";

    /** One size, wheels included, lines ended by line feeds. */
    static final String ONE = """
            Size,Stack,Reach,HTA,STA,Chainstay,BB drop,Rake,Wheel,Tyre
            S,525,379,72.4,74,410,72,44,622,28
            """;

    private Charts() {}

    static ChartImport read(String text) {
        return read(text, Map.of());
    }

    static ChartImport read(String text, Map<String, Double> set) {
        return ChartFile.read(
                text.getBytes(StandardCharsets.UTF_8), FILE, new ChartImport.Wanted("maker", "", Setting.changes(set)));
    }

    /** The only bike of a chart without doubts. */
    static Bike bike(String text) {
        ChartImport read = read(text);
        assertThat(read.doubts()).isEmpty();
        assertThat(read.bikes()).hasSize(1);
        return read.bikes().get(0);
    }

    /** The only doubt of a chart. */
    static ChartImport.Doubt doubt(String text) {
        ChartImport read = read(text);
        assertThat(read.doubts()).hasSize(1);
        assertThat(read.isWhole()).isFalse();
        return read.doubts().get(0);
    }
}
