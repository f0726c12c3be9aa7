package rakeline.catalogue;

import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rakeline.geometry.Inputs;
import rakeline.json.JsonText;
import rakeline.json.Piece;
import rakeline.quantity.Entries;
import rakeline.quantity.Input;
import rakeline.quantity.Nearest;
import rakeline.quantity.Quantity;
import rakeline.quantity.Refusal;
import rakeline.rider.BodyTable;
import rakeline.rider.Rider;
import rakeline.rider.RiderInputs;

/**
 * Reads a rider file ({@code *.rider.json}), version 1. Shoe and contact are the groups of a bike file, whole: what the
 * rider's shoe leaves out takes its default, not the bike's. Of cranks the length is needed, the rest may stay the bike's.
 */
public final class RiderFile {
    /** What the file's {@code format} says. */
    /** How its files are called at the end. */
    public static final String ENDING = ".rider.json";

    public static final String FORMAT = "rakeline/rider";

    /** The newest version that is read. */
    public static final int VERSION = 1;

    /** Beyond this size in bytes a rider file is refused. */
    public static final long SIZE_LIMIT = 1_000_000;

    private static final String TABLE = "segments.table";
    private static final Set<String> BIKE_GROUPS = Set.of("shoe", "crank", "contact");
    private static final Set<String> GROUPS =
            Stream.concat(BIKE_GROUPS.stream(), Stream.of("segments")).collect(Collectors.toUnmodifiableSet());
    private static final Map<String, Input> OWN = Inputs.all().stream()
            .filter(input -> BIKE_GROUPS.contains(input.group()))
            .collect(Collectors.toUnmodifiableMap(Input::key, input -> input));
    private static final Map<String, Input> BODY =
            RiderInputs.all().stream().collect(Collectors.toUnmodifiableMap(Input::key, input -> input));
    private static final Set<String> KNOWN = Stream.of(
                    OWN.keySet(), BODY.keySet(), GROUPS, FileHead.KEYS, Set.of(TABLE))
            .flatMap(Set::stream)
            .collect(Collectors.toUnmodifiableSet());

    private final Map<Input, Double> body = new HashMap<>();
    private final Map<Input, Double> own = new HashMap<>();
    private final Set<String> groups = new HashSet<>();
    private BodyTable table = BodyTable.CADAVERS_1955;

    private RiderFile() {}

    /**
     * Reads a rider.
     *
     * @param file as named to the person in a refusal
     * @throws Refusal naming file, key, value and what is accepted
     */
    public static Rider read(byte[] bytes, String file) {
        try {
            return new RiderFile().rider(JsonText.parse(bytes));
        } catch (Refusal e) {
            throw e.in(file);
        }
    }

    private Rider rider(Piece root) {
        String name = FileHead.check(root, FORMAT, VERSION);
        readGroup("", root);
        return Rider.of(name, Entries.none().with(body), table, wholeGroups(name));
    }

    private void readGroup(String prefix, Piece group) {
        group.members().forEach((name, piece) -> {
            String key = prefix + name;
            if (key.equals(TABLE) || (key.equals("segments") && piece.value() instanceof String)) {
                table = table(piece);
            } else if (GROUPS.contains(key)) {
                groups.add(key);
                readGroup(key + ".", piece);
            } else if (!FileHead.KEYS.contains(key)) {
                readNumber(key, piece);
            }
        });
    }

    private void readNumber(String key, Piece piece) {
        if (OWN.containsKey(key)) {
            own.put(OWN.get(key), number(OWN.get(key), piece));
        } else if (BODY.containsKey(key)) {
            body.put(BODY.get(key), number(BODY.get(key), piece));
        } else {
            throw piece.refusal("is " + piece.shown() + ", but is not a key of a rider file" + hint(key));
        }
    }

    private static double number(Input input, Piece piece) {
        Quantity quantity = input.quantity();
        if (piece.value() instanceof Piece.Figure number && quantity.accepted().contains(number.value())) {
            return number.value();
        }
        throw piece.unlike("a number with a decimal point, " + quantity.acceptedWords());
    }

    private static BodyTable table(Piece piece) {
        Optional<BodyTable> table = piece.value() instanceof String word ? BodyTable.of(word) : Optional.empty();
        return table.orElseThrow(() -> piece.unlike("the name of a table, "
                + Stream.of(BodyTable.values()).map(BodyTable::word).collect(Collectors.joining(", "))));
    }

    private Map<Input, Double> wholeGroups(String name) {
        List<Input> left = OWN.values().stream()
                .filter(input -> groups.contains(input.group()) && !own.containsKey(input) && !staysOnTheBike(input))
                .toList();
        List<Input> missing = left.stream()
                .filter(input -> input.presence() instanceof Input.Presence.Required)
                .sorted(Comparator.comparing(Input::key))
                .toList();
        if (!missing.isEmpty()) {
            throw Input.notWhole(name, missing);
        }
        Map<Input, Double> whole = new HashMap<>(own);
        left.forEach(input -> complete(whole, input));
        return whole;
    }

    /** Of cranks the length is the rider's; what else is not given stays as on the bike. */
    private static boolean staysOnTheBike(Input input) {
        return input.group().equals("crank") && !input.equals(Inputs.CRANK_LENGTH);
    }

    private static void complete(Map<Input, Double> whole, Input input) {
        if (input.presence() instanceof Input.Presence.Defaulted usual) {
            whole.put(input, usual.value());
        }
    }

    private static String hint(String key) {
        return Nearest.of(key, KNOWN)
                .map(near -> "; did you mean " + near + "?")
                .orElse("");
    }
}
