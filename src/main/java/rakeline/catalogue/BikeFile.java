package rakeline.catalogue;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rakeline.geometry.Bike;
import rakeline.geometry.Inputs;
import rakeline.geometry.Provenance;
import rakeline.json.JsonText;
import rakeline.json.Piece;
import rakeline.quantity.Entries;
import rakeline.quantity.Input;
import rakeline.quantity.Nearest;
import rakeline.quantity.Quantity;
import rakeline.quantity.Refusal;

/** Reads a bike file ({@code *.bike.json}), version 1. */
public final class BikeFile {
    /** What the file's {@code format} says. */
    /** How its files are called at the end. */
    public static final String ENDING = ".bike.json";

    public static final String FORMAT = "rakeline/bike";

    /** The newest version that is read, and the one that is written. */
    public static final int VERSION = 1;

    /** Beyond this size in bytes a bike file is refused. */
    public static final long SIZE_LIMIT = 1_000_000;

    private static final Map<String, Input> INPUTS =
            Inputs.all().stream().collect(Collectors.toUnmodifiableMap(Input::key, input -> input));
    private static final Set<String> GROUPS =
            Inputs.all().stream().flatMap(input -> withParents(input.group())).collect(Collectors.toUnmodifiableSet());
    private static final Set<String> HEAD =
            Stream.concat(FileHead.KEYS.stream(), Stream.of("provenance")).collect(Collectors.toUnmodifiableSet());
    private static final Set<String> KNOWN =
            Stream.of(INPUTS.keySet(), GROUPS, HEAD).flatMap(Set::stream).collect(Collectors.toUnmodifiableSet());

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

    private Bike bike(Piece root) {
        String name = FileHead.check(root, FORMAT, VERSION);
        readGroup("", root);
        return Bike.of(
                name,
                Entries.none().with(values),
                groups,
                provenance(root.members().get("provenance")));
    }

    private void readGroup(String prefix, Piece group) {
        group.members().forEach((name, piece) -> {
            String key = prefix + name;
            if (GROUPS.contains(key)) {
                groups.add(key);
                readGroup(key + ".", piece);
            } else if (!HEAD.contains(key)) {
                readNumber(key, piece);
            }
        });
    }

    private void readNumber(String key, Piece piece) {
        Input input = INPUTS.get(key);
        if (input == null) {
            throw piece.refusal("is " + piece.shown() + ", but is not a key of a bike file" + hint(key));
        }
        Quantity quantity = input.quantity();
        if (!(piece.value() instanceof Piece.Figure number)
                || !quantity.accepted().contains(number.value())) {
            throw piece.unlike("a number with a decimal point, " + quantity.acceptedWords());
        }
        values.put(input, number.value() + 0.0); // no negative zero
    }

    private static String hint(String key) {
        return Nearest.of(key, KNOWN)
                .map(near -> "; did you mean " + near + "?")
                .orElse("");
    }

    private static Map<String, Provenance> provenance(Piece piece) {
        Map<String, Provenance> byKey = new HashMap<>();
        if (piece != null) {
            piece.members("provenance", INPUTS.keySet()).forEach((key, origin) -> byKey.put(key, origin(origin)));
            byKey.values().removeIf(Provenance::saysNothing);
        }
        return byKey;
    }

    private static Provenance origin(Piece piece) {
        Map<String, Piece> members = piece.members("a provenance", List.of("from", "u", "step"));
        Optional<Provenance.Origin> from =
                Optional.ofNullable(members.get("from")).map(word -> word.oneOf(Provenance.Origin.values()));
        return new Provenance(from, notNegative(members.get("u")), notNegative(members.get("step")));
    }

    private static double notNegative(Piece piece) {
        if (piece == null) {
            return Double.NaN;
        }
        if (piece.number() < 0) {
            throw piece.unlike("a number from 0 up");
        }
        return piece.number();
    }

    private static Stream<String> withParents(String group) {
        int dot = group.lastIndexOf('.');
        return dot < 0 ? Stream.of(group) : Stream.concat(withParents(group.substring(0, dot)), Stream.of(group));
    }
}
