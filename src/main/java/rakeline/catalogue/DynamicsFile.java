package rakeline.catalogue;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import rakeline.handling.BicycleParameters;
import rakeline.handling.BicycleParameters.Body;
import rakeline.handling.BicycleParameters.Wheel;
import rakeline.handling.Dynamics;
import rakeline.json.JsonText;
import rakeline.json.Piece;
import rakeline.quantity.Refusal;

/**
 * Reads a dynamics file ({@code *.dynamics.json}), version 1: the 25 numbers of the linear bicycle and gravity, in SI units
 * and with the symbols of Meijaard, Papadopoulos, Ruina and Schwab 2007.
 */
public final class DynamicsFile {
    /** What the file's {@code format} says. */
    /** How its files are called at the end. */
    public static final String ENDING = ".dynamics.json";

    public static final String FORMAT = "rakeline/dynamics";

    /** The newest version that is read. */
    public static final int VERSION = 1;

    /** Beyond this size in bytes a dynamics file is refused. */
    public static final long SIZE_LIMIT = 100_000;

    /** The keys of the numbers, each of which the file gives. */
    public static final List<String> SYMBOLS = List.of(
            "w",
            "c",
            "lambdaRad",
            "g",
            "rR",
            "mR",
            "IRxx",
            "IRyy",
            "xB",
            "zB",
            "mB",
            "IBxx",
            "IBxz",
            "IByy",
            "IBzz",
            "xH",
            "zH",
            "mH",
            "IHxx",
            "IHxz",
            "IHyy",
            "IHzz",
            "rF",
            "mF",
            "IFxx",
            "IFyy");

    private static final String SOURCE = "source";

    private final Piece root;
    private final Map<String, Piece> members;

    private DynamicsFile(Piece root) {
        this.root = root;
        this.members = root.members("a dynamics file", known());
    }

    /**
     * Reads it.
     *
     * @param file as named to the person in a refusal
     * @throws Refusal naming file, key, value and what is accepted
     */
    public static Dynamics read(byte[] bytes, String file) {
        try {
            Piece root = JsonText.parse(bytes);
            String name = FileHead.check(root, FORMAT, VERSION);
            return new DynamicsFile(root).dynamics(name);
        } catch (Refusal e) {
            throw e.in(file);
        }
    }

    private Dynamics dynamics(String name) {
        String source = members.containsKey(SOURCE) ? members.get(SOURCE).oneLine() : "";
        return Dynamics.of(name, source, parameters());
    }

    private BicycleParameters parameters() {
        return new BicycleParameters(
                number("w"),
                number("c"),
                number("lambdaRad"),
                number("g"),
                wheel("R"),
                body("B"),
                body("H"),
                wheel("F"));
    }

    private Wheel wheel(String letter) {
        String moment = "I" + letter;
        return new Wheel(
                letter, number("r" + letter), number("m" + letter), number(moment + "xx"), number(moment + "yy"));
    }

    private Body body(String letter) {
        String moment = "I" + letter;
        return new Body(
                letter,
                number("x" + letter),
                number("z" + letter),
                number("m" + letter),
                number(moment + "xx"),
                number(moment + "xz"),
                number(moment + "yy"),
                number(moment + "zz"));
    }

    private double number(String symbol) {
        return FileHead.needed(root, symbol, "a number in SI units").number();
    }

    private static Set<String> known() {
        Set<String> known = new LinkedHashSet<>(SYMBOLS);
        known.addAll(FileHead.KEYS);
        known.add(SOURCE);
        return known;
    }
}
