package rakeline.catalogue;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rakeline.geometry.Bike;
import rakeline.geometry.Inputs;
import rakeline.geometry.Provenance;
import rakeline.quantity.Decimals;
import rakeline.quantity.Entries;
import rakeline.quantity.Input;
import rakeline.quantity.JsonText;
import rakeline.quantity.Nearest;
import rakeline.quantity.Refusal;

/** Reads a bike file ({@code *.bike.json}), version 1. */
public final class BikeFile {
    /** What the file's {@code format} says. */
    public static final String FORMAT = "rakeline/bike";

    /** The newest version that is read, and the one that is written. */
    public static final int VERSION = 1;

    /** Beyond this size in bytes a bike file is refused. */
    public static final long SIZE_LIMIT = 1_000_000;

    private static final Map<String, Input> INPUTS =
            Inputs.all().stream().collect(Collectors.toUnmodifiableMap(Input::key, input -> input));
    private static final Set<String> GROUPS =
            Inputs.all().stream().flatMap(input -> withParents(input.group())).collect(Collectors.toUnmodifiableSet());
    private static final Set<String> HEAD = Set.of("format", "version", "name", "provenance");

    private final Map<Input, Double> values = new HashMap<>();
    private final Set<String> groups = new HashSet<>();

    private BikeFile() {}

    /**
     * Reads a bike.
     *
     * @param file as named to the person in a refusal
     * @throws Refusal naming file, key, value and what is accepted
     */
    public static Bike read(byte[] bytes, String file) {
        try {
            return new BikeFile().bike(JsonText.parse(bytes));
        } catch (Refusal e) {
            throw e.in(file);
        }
    }

    private Bike bike(JsonNode root) {
        if (!root.isObject()) {
            throw new Refusal("it holds " + kind(root) + "; accepted is one JSON object.");
        }
        checkHead(root);
        readGroup("", root);
        return Bike.of(name(root), Entries.none().with(values), groups, provenance(root.get("provenance")));
    }

    private static void checkHead(JsonNode root) {
        JsonNode format = root.get("format");
        if (format == null || !FORMAT.equals(format.textValue())) {
            throw new Refusal("format is " + shown(format) + "; accepted is \"" + FORMAT + "\".");
        }
        JsonNode version = root.get("version");
        if (version != null && version.isInt() && version.intValue() > VERSION) {
            throw new Refusal(
                    "version is " + version + ", from a newer Rakeline; this one reads version " + VERSION + ".");
        }
        if (version == null || !version.isInt() || version.intValue() != VERSION) {
            throw new Refusal("version is " + shown(version) + "; accepted is " + VERSION + ".");
        }
    }

    private static String name(JsonNode root) {
        JsonNode name = root.get("name");
        if (name == null || !name.isTextual() || name.textValue().isBlank()) {
            throw new Refusal("name is " + shown(name) + "; accepted is a text that is not empty.");
        }
        return name.textValue();
    }

    private void readGroup(String prefix, JsonNode node) {
        node.properties().forEach(field -> {
            String key = prefix + field.getKey();
            if (prefix.isEmpty() && HEAD.contains(key)) {
                return;
            }
            if (GROUPS.contains(key)) {
                enterGroup(key, field.getValue());
            } else {
                readNumber(key, field.getValue());
            }
        });
    }

    private void enterGroup(String group, JsonNode node) {
        if (!node.isObject()) {
            throw new Refusal(group + " is " + shown(node) + "; accepted is a group of keys in braces.");
        }
        groups.add(group);
        readGroup(group + ".", node);
    }

    private void readNumber(String key, JsonNode node) {
        Input input = INPUTS.get(key);
        if (input == null) {
            Set<String> known = new TreeSet<>(INPUTS.keySet());
            known.addAll(GROUPS);
            known.addAll(HEAD);
            throw new Refusal(key + " (" + shown(node) + ") is not a key of a bike file" + Nearest.hint(key, known));
        }
        if (!node.isNumber()) {
            throw new Refusal(key + " is " + shown(node) + "; accepted is a number with a decimal point, "
                    + input.quantity().accepted() + " "
                    + input.quantity().unit().symbol() + ".");
        }
        values.put(input, input.quantity().check(node.doubleValue()));
    }

    private static Map<String, Provenance> provenance(JsonNode node) {
        if (node == null) {
            return Map.of();
        }
        if (!node.isObject()) {
            throw new Refusal("provenance is " + shown(node) + "; accepted is a group of keys in braces.");
        }
        Map<String, Provenance> byKey = new HashMap<>();
        node.properties().forEach(field -> byKey.put(known(field.getKey()), origin(field.getKey(), field.getValue())));
        return byKey;
    }

    private static String known(String key) {
        if (!INPUTS.containsKey(key)) {
            throw new Refusal("provenance names " + key + ", which is not a key of a bike file"
                    + Nearest.hint(key, INPUTS.keySet()));
        }
        return key;
    }

    private static Provenance origin(String key, JsonNode node) {
        String place = "provenance." + key;
        if (!node.isObject()) {
            throw new Refusal(place + " is " + shown(node) + "; accepted is {\"from\": …, \"u\": …}.");
        }
        node.fieldNames().forEachRemaining(name -> {
            if (!List.of("from", "u").contains(name)) {
                throw new Refusal(place + "." + name + " is not known; accepted is from and u.");
            }
        });
        return new Provenance(from(place, node.get("from")), uncertainty(place, node.get("u")));
    }

    private static Optional<Provenance.Origin> from(String place, JsonNode node) {
        if (node == null) {
            return Optional.empty();
        }
        Optional<Provenance.Origin> origin = Provenance.Origin.ofWord(node.asText());
        if (!node.isTextual() || origin.isEmpty()) {
            throw new Refusal(
                    place + ".from is " + shown(node) + "; accepted is charted, measured, assumed or solved.");
        }
        return origin;
    }

    private static double uncertainty(String place, JsonNode node) {
        if (node == null) {
            return Double.NaN;
        }
        if (!node.isNumber() || !(node.doubleValue() >= 0) || Double.isInfinite(node.doubleValue())) {
            throw new Refusal(place + ".u is " + shown(node) + "; accepted is a number from 0 up.");
        }
        return node.doubleValue();
    }

    private static Stream<String> withParents(String group) {
        int dot = group.lastIndexOf('.');
        return dot < 0 ? Stream.of(group) : Stream.concat(withParents(group.substring(0, dot)), Stream.of(group));
    }

    private static String shown(JsonNode node) {
        if (node == null) {
            return "missing";
        }
        String text = node.isNumber() ? Decimals.shortest(node.doubleValue()) : node.toString();
        return text.length() > 60 ? text.substring(0, 60) + "…" : text;
    }

    private static String kind(JsonNode node) {
        return node.isArray() ? "a list" : "a single value";
    }
}
