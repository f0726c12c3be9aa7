package rakeline.catalogue;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import rakeline.geometry.Inputs;
import rakeline.geometry.parts.Bound;
import rakeline.geometry.parts.Category;
import rakeline.geometry.parts.Field;
import rakeline.geometry.parts.Part;
import rakeline.geometry.parts.Spacers;
import rakeline.geometry.parts.Stock;
import rakeline.json.JsonText;
import rakeline.json.Piece;
import rakeline.quantity.Input;
import rakeline.quantity.Limit;
import rakeline.quantity.Quantity;
import rakeline.quantity.Refusal;

/**
 * Reads a file of stock parts ({@code *.parts.json}), version 1: lists of parts by category, each number one value or
 * a list of values, of which every combination is a part.
 */
public final class PartsFile {
    /** What the file's {@code format} says. */
    /** How its files are called at the end. */
    public static final String ENDING = ".parts.json";

    public static final String FORMAT = "rakeline/parts";

    /** The newest version that is read. */
    public static final int VERSION = 1;

    /** Beyond this size in bytes a parts file is refused. */
    public static final long SIZE_LIMIT = 1_000_000;

    private static final int MOST_PARTS = 10_000;
    private static final double USUAL_STACK_MM = 40;
    private static final String LIMITS = "limits";
    private static final String FLIPS = "flips";
    private static final Set<String> KNOWN = Stream.of(
                    FileHead.KEYS.stream(), Stream.of(Category.values()).map(Category::word), Stream.of(LIMITS))
            .flatMap(words -> words)
            .collect(Collectors.toUnmodifiableSet());

    private PartsFile() {}

    /**
     * Reads the parts.
     *
     * @param file as named to the person in a refusal
     * @throws Refusal naming file, key, value and what is accepted
     */
    public static Stock read(byte[] bytes, String file) {
        try {
            return stock(JsonText.parse(bytes));
        } catch (Refusal e) {
            throw e.in(file);
        }
    }

    private static Stock stock(Piece root) {
        String name = FileHead.check(root, FORMAT, VERSION);
        Map<String, Piece> members = root.members("a parts file", KNOWN);
        Map<Category, List<Part>> parts = new EnumMap<>(Category.class);
        for (Category category : Category.values()) {
            if (category != Category.SPACERS && members.containsKey(category.word())) {
                parts.put(category, parts(category, members.get(category.word())));
            }
        }
        return new Stock(
                name,
                parts,
                Optional.ofNullable(members.get(Category.SPACERS.word())).map(PartsFile::spacers),
                members.containsKey(LIMITS) ? members.get(LIMITS).each(PartsFile::bound) : List.of());
    }

    private static List<Part> parts(Category category, Piece list) {
        List<Part> parts = new ArrayList<>();
        list.items().forEach(piece -> parts.addAll(combinations(category, piece)));
        if (parts.isEmpty()) {
            throw list.unlike("a list of at least one part");
        }
        return parts;
    }

    private static List<Part> combinations(Category category, Piece piece) {
        Map<String, Piece> members = piece.members("the list " + category.word(), names(category));
        List<Map<Input, Double>> all = List.of(Map.of());
        for (Field field : category.fields()) {
            if (field.needed() && !members.containsKey(field.name())) {
                throw piece.refusal(
                        "has no \"" + field.name() + "\", which every one of " + category.word() + " needs");
            }
            if (members.containsKey(field.name())) {
                all = times(all, field, values(field, members));
            }
        }
        if (category == Category.BARS) {
            checkHoods(piece, members.keySet());
        }
        if (all.size() > MOST_PARTS) {
            throw piece.refusal("makes " + all.size() + " parts; accepted are up to " + MOST_PARTS);
        }
        return all.stream().map(Part::new).toList();
    }

    /** A bar says where its hoods are, where its levers are, or its reach, with which the hoods go. */
    private static void checkHoods(Piece piece, Set<String> given) {
        long hoods =
                Stream.of("hoodForwardMm", "hoodRiseMm").filter(given::contains).count();
        long levers =
                Stream.of("leverAheadMm", "leverUpMm").filter(given::contains).count();
        boolean reach = given.contains("reachMm");
        boolean hoodsAlone = hoods == 2 && levers == 0;
        boolean leversAlone = hoods == 0 && levers == 2 && reach;
        boolean reachAlone = hoods == 0 && levers == 0 && reach;
        if (!hoodsAlone && !leversAlone && !reachAlone) {
            throw piece.refusal(
                    "does not say where the hoods of a bar are; accepted is hoodForwardMm and hoodRiseMm, or"
                            + " reachMm with leverAheadMm and leverUpMm, or reachMm alone, with which the hoods go");
        }
    }

    private static List<String> names(Category category) {
        Stream<String> fields = category.fields().stream().map(Field::name);
        return (category == Category.STEMS ? Stream.concat(fields, Stream.of(FLIPS)) : fields).toList();
    }

    private static List<Map<Input, Double>> times(List<Map<Input, Double>> all, Field field, List<Double> values) {
        List<Map<Input, Double>> more = new ArrayList<>();
        for (Map<Input, Double> one : all) {
            for (double value : values) {
                Map<Input, Double> with = new HashMap<>(one);
                field.inputs().forEach(input -> with.put(input, value));
                more.add(with);
            }
        }
        return more;
    }

    /** Stems can be turned over unless the file says that they cannot. */
    private static List<Double> values(Field field, Map<String, Piece> members) {
        List<Double> values = numbers(members.get(field.name()), field.inputs().get(0));
        boolean flips = field.inputs().contains(Inputs.STEM_ANGLE)
                && (!members.containsKey(FLIPS) || members.get(FLIPS).flag());
        return flips
                ? values.stream()
                        .flatMap(angle -> Stream.of(angle, 0 - angle))
                        .distinct()
                        .toList()
                : values;
    }

    /** One number, or a list of numbers, as an input accepts them. */
    private static List<Double> numbers(Piece piece, Input input) {
        List<Piece> pieces = piece.value() instanceof List ? piece.items() : List.of(piece);
        if (pieces.isEmpty()) {
            throw piece.unlike("a number, or a list of numbers");
        }
        return pieces.stream().map(each -> number(each, input.quantity())).toList();
    }

    private static double number(Piece piece, Quantity quantity) {
        if (piece.value() instanceof Piece.Figure number && quantity.accepted().contains(number.value())) {
            return number.value();
        }
        throw piece.unlike("a number with a decimal point, " + quantity.acceptedWords());
    }

    private static Spacers spacers(Piece piece) {
        Map<String, Piece> members = piece.members("spacers", List.of("heightsMm", "upToMm", "limitMm"));
        List<Double> heights = numbers(piece.member("heightsMm"), Inputs.SPACERS);
        if (DoubleStream.of(heights.stream().mapToDouble(height -> height).toArray())
                .anyMatch(height -> height < 1)) {
            throw members.get("heightsMm").unlike("heights from 1 mm up");
        }
        double limit = one(members, "limitMm", Spacers.USUAL_LIMIT_MM);
        return new Spacers(heights, one(members, "upToMm", Math.max(limit, USUAL_STACK_MM)), limit);
    }

    private static double one(Map<String, Piece> members, String key, double otherwise) {
        return members.containsKey(key) ? number(members.get(key), Inputs.SPACERS.quantity()) : otherwise;
    }

    private static Bound bound(Piece piece) {
        Map<String, Piece> members = piece.members("a limit", List.of("key", "atLeast", "atMost", "source"));
        if (members.containsKey("atLeast") == members.containsKey("atMost")) {
            throw piece.refusal("says atLeast " + (members.containsKey("atLeast") ? "and" : "nor")
                    + " atMost; accepted is one of the two");
        }
        Limit.Side side = members.containsKey("atLeast") ? Limit.Side.AT_LEAST : Limit.Side.AT_MOST;
        double value = (side == Limit.Side.AT_LEAST ? members.get("atLeast") : members.get("atMost")).number();
        String source = piece.member("source").oneLine();
        return new Bound(piece.member("key").oneLine(), new Limit(value, "set in the parts file", source, side));
    }
}
