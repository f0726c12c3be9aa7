package rakeline.catalogue;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import com.fasterxml.jackson.databind.ObjectWriter;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rakeline.geometry.Bike;
import rakeline.geometry.Inputs;
import rakeline.geometry.Provenance;
import rakeline.quantity.Decimals;
import rakeline.quantity.Input;
import rakeline.quantity.Refusal;
import rakeline.quantity.Sentences;

/** Writes a bike file, so that reading it gives an equal bike: only what was given, numbers as the shortest decimals. */
public final class BikeWriter {
    private static final int LONGEST_NAME = 100;
    private static final ObjectWriter JSON = JsonMapper.builder()
            .enable(StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN)
            .build()
            .writer(printer());

    private BikeWriter() {}

    /** A file's name for a bike of a name, such as every system takes. */
    public static String fileName(String name) {
        String safe = name.replaceAll("[\\\\/:*?\"<>|\\p{Cntrl}]", "-").strip().replaceAll("^\\.+|\\.+$", "");
        return (safe.length() > LONGEST_NAME ? safe.substring(0, LONGEST_NAME) : safe) + BikeFile.ENDING;
    }

    /**
     * The whole file as text, lines ended by line feeds.
     *
     * @throws Refusal where the file could not be read again
     */
    public static String text(Bike bike) {
        return new String(write(bike), StandardCharsets.UTF_8);
    }

    /**
     * The whole file, lines ended by line feeds.
     *
     * @throws Refusal where the file could not be read again
     */
    public static byte[] write(Bike bike) {
        try {
            return (JSON.writeValueAsString(tree(bike)) + "\n").getBytes(StandardCharsets.UTF_8);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a tree of plain values can always be written", e);
        }
    }

    /**
     * The file as plain values: maps, texts and numbers.
     *
     * @throws Refusal for numbers that a file is not accepted with, as a bike's that was solved for may be
     */
    public static Map<String, Object> tree(Bike bike) {
        checkReadable(bike);
        Map<String, Object> root = new LinkedHashMap<>();
        root.put("format", BikeFile.FORMAT);
        root.put("version", BikeFile.VERSION);
        root.put("name", bike.name());
        for (Input input : Inputs.all()) {
            if (bike.hasGroup(input.group())) {
                put(group(root, input.group()), input, bike);
            }
        }
        if (!bike.provenance().isEmpty()) {
            root.put("provenance", provenance(bike));
        }
        return root;
    }

    private static void checkReadable(Bike bike) {
        List<String> beyond = bike.beyondEntry().stream()
                .map(input -> input.quantity().inSentence() + " is "
                        + input.quantity().said(bike.get(input)) + ", accepted is "
                        + input.quantity().acceptedWords())
                .toList();
        if (!beyond.isEmpty()) {
            throw new Refusal(bike.name() + " cannot be written to a file that could be read again: "
                    + Sentences.list(beyond) + ".");
        }
    }

    private static void put(Map<String, Object> group, Input input, Bike bike) {
        if (bike.given().has(input)) {
            group.put(input.name(), decimal(bike.get(input)));
        }
    }

    @SuppressWarnings("unchecked") // groups are made here alone, and no group has the name of a number
    private static Map<String, Object> group(Map<String, Object> root, String path) {
        Map<String, Object> group = root;
        for (String name : path.split("\\.", -1)) {
            group = (Map<String, Object>) group.computeIfAbsent(name, any -> new LinkedHashMap<String, Object>());
        }
        return group;
    }

    private static Map<String, Object> provenance(Bike bike) {
        Map<String, Object> byKey = new LinkedHashMap<>();
        for (Input input : Inputs.all()) {
            Provenance provenance = bike.provenance().get(input.key());
            if (provenance != null) {
                byKey.put(input.key(), tree(provenance));
            }
        }
        return byKey;
    }

    private static Map<String, Object> tree(Provenance provenance) {
        Map<String, Object> tree = new LinkedHashMap<>();
        provenance.from().ifPresent(from -> tree.put("from", from.word()));
        put(tree, "u", provenance.standardUncertainty());
        put(tree, "step", provenance.step());
        return tree;
    }

    private static void put(Map<String, Object> tree, String name, double value) {
        if (!Double.isNaN(value)) {
            tree.put(name, decimal(value));
        }
    }

    private static BigDecimal decimal(double value) {
        return new BigDecimal(Decimals.shortest(value));
    }

    private static DefaultPrettyPrinter printer() {
        DefaultIndenter lines = new DefaultIndenter("  ", "\n");
        return new DefaultPrettyPrinter(
                        Separators.createDefaultInstance().withObjectFieldValueSpacing(Separators.Spacing.AFTER))
                .withObjectIndenter(lines)
                .withArrayIndenter(lines);
    }
}
