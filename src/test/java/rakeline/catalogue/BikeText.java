package rakeline.catalogue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import rakeline.geometry.Bike;
import rakeline.geometry.Bikes;
import rakeline.geometry.Inputs;
import rakeline.quantity.Decimals;
import rakeline.quantity.Input;
import rakeline.quantity.Refusal;

/** The text of a bike file being written for a test: a tree of objects whose leaves are raw JSON. */
final class BikeText {
    static final String FILE = "small.bike.json";

    private static final Bike PLAIN = Bikes.plain();
    private static final Bike WHOLE = Bikes.whole();

    private final Map<String, Object> root;

    private BikeText(Map<String, Object> root) {
        this.root = root;
    }

    /** Frame, fork and wheels. */
    static BikeText plain() {
        return of(PLAIN::has);
    }

    /** Every key there is, but those of levers, beside which the hood point is not given. */
    static BikeText whole() {
        return of(input -> !isLever(input.key()));
    }

    private static boolean isLever(String key) {
        return key.startsWith("cockpit.bar.lever.");
    }

    private static BikeText of(java.util.function.Predicate<Input> wanted) {
        BikeText text = new BikeText(new LinkedHashMap<>())
                .withRaw("format", "\"rakeline/bike\"")
                .withRaw("version", "1")
                .withRaw("name", "\"Fixture\"");
        Inputs.all().stream().filter(wanted).forEach(input -> text.put(input.key(), Decimals.shortest(sample(input))));
        return text;
    }

    /** An accepted value: that of the whole bike, else one inside the range. */
    static double sample(Input input) {
        double from = input.quantity().accepted().from();
        double to = input.quantity().accepted().to();
        return WHOLE.has(input) ? WHOLE.get(input) : from + (to - from) / 4;
    }

    BikeText with(String key, double value) {
        return withRaw(key, Decimals.shortest(value));
    }

    /** With the key; levers take the place of the hood point. */
    BikeText withRaw(String key, String json) {
        if (isLever(key)) {
            without("cockpit.bar.hoodForwardMm").without("cockpit.bar.hoodRiseMm");
            put("cockpit.bar.lever.aheadMm", "35");
            put("cockpit.bar.lever.upMm", "15");
        }
        put(key, json);
        return this;
    }

    BikeText without(String key) {
        parent(key).remove(last(key));
        return this;
    }

    private void put(String key, Object leaf) {
        parent(key).put(last(key), leaf);
    }

    @SuppressWarnings("unchecked") // inner nodes are made here alone
    private Map<String, Object> parent(String key) {
        Map<String, Object> node = root;
        String[] path = key.split("\\.", -1);
        for (int i = 0; i < path.length - 1; i++) {
            node = (Map<String, Object>) node.computeIfAbsent(path[i], any -> new LinkedHashMap<String, Object>());
        }
        return node;
    }

    private static String last(String key) {
        return key.substring(key.lastIndexOf('.') + 1);
    }

    String text() {
        return json(root);
    }

    private static String json(Object node) {
        return node instanceof Map<?, ?> map
                ? map.entrySet().stream()
                        .map(entry -> "\"" + entry.getKey() + "\": " + json(entry.getValue()))
                        .collect(Collectors.joining(",\n", "{\n", "\n}"))
                : node.toString();
    }

    Bike read() {
        return read(text());
    }

    static Bike read(String text) {
        return BikeFile.read(text.getBytes(StandardCharsets.UTF_8), FILE);
    }

    /** One sentence that names the file and holds these words. */
    void isRefusedFor(String... words) {
        assertRefused(text(), words);
    }

    static void assertRefused(String text, String... words) {
        assertThatThrownBy(() -> read(text))
                .satisfies(BikeText::isOnePlainSentence)
                .satisfies(refusal -> assertThat(List.of(words))
                        .allSatisfy(word -> assertThat(refusal).hasMessageContaining(word)));
    }

    static void isOnePlainSentence(Throwable refusal) {
        assertThat(refusal).isInstanceOf(Refusal.class);
        assertThat(refusal.getMessage())
                .startsWith(FILE + ": ")
                .matches("(?s).*[^.?][.?]")
                .doesNotContain("\n", "Exception", "com.fasterxml", "java.lang")
                .hasSizeLessThan(400);
    }
}
