package rakeline.shell.rack;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import rakeline.catalogue.Bundled;

class RackStockTest {
    private static final Map<String, String> BIKES = RackStock.bundledBikes();

    @Test
    void bundledBikesStandBySizeWithinTheirKind() {
        List<String> roads = BIKES.keySet().stream()
                .filter(name -> name.matches("Road [XSML]+"))
                .toList();
        assertThat(roads).containsExactly("Road XXS", "Road XS", "Road S", "Road M", "Road L", "Road XL");
    }

    @Test
    void everyBundledBikeIsOffered() {
        assertThat(BIKES.values()).containsExactlyInAnyOrderElementsOf(Bundled.BIKES.paths());
    }
}
