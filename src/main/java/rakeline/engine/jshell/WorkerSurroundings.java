package rakeline.engine.jshell;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import rakeline.catalogue.Roots;
import rakeline.engine.Control;
import rakeline.prelude.DialRequest;
import rakeline.prelude.PickRequest;
import rakeline.prelude.Surroundings;
import rakeline.quantity.Decimals;
import rakeline.quantity.Refusal;

/** What rows in the worker are given: values of dials and pickers, and places to find files. */
final class WorkerSurroundings implements Surroundings {
    private final Map<String, Double> dials = new HashMap<>();
    private final Map<String, String> picks = new HashMap<>();
    private Roots roots = Roots.bundled();
    private List<String> rack = List.of();
    private String declaring = "";
    private Optional<Control> declared = Optional.empty();
    private String notice = "";

    /** @param reading told of each file that is looked at, before it is read */
    void readFrom(List<Path> folders, Roots.Links links, Consumer<Path> reading) {
        roots = new Roots(folders, links, reading);
    }

    /** NaN: none is stored. */
    void setDial(String name, double value) {
        dials.put(name, value);
    }

    /** Empty: none is stored. */
    void setPick(String name, String path) {
        picks.put(name, path);
    }

    void setRack(List<String> paths) {
        rack = List.copyOf(paths);
    }

    @Override
    public List<String> rack() {
        return rack;
    }

    /** Says which variable the next snippet initialises with a dial or picker; empty for none. */
    void declaring(String name) {
        declaring = name;
        declared = Optional.empty();
        notice = "";
    }

    Optional<Control> declared() {
        return declared;
    }

    String notice() {
        return notice;
    }

    @Override
    public Roots roots() {
        return roots;
    }

    @Override
    public double dial(DialRequest asked) {
        String name = takeName("dial");
        double value = dialValue(name, asked);
        declared = Optional.of(new Control.Dial(
                name,
                asked.label(),
                asked.key(),
                asked.unit(),
                asked.min(),
                asked.max(),
                asked.step(),
                asked.initial(),
                asked.own(),
                value,
                asked.decimals()));
        return value;
    }

    @Override
    public String pick(PickRequest asked) {
        String name = takeName("picker");
        String stored = picks.getOrDefault(name, "");
        boolean known = asked.paths().contains(stored);
        String chosen = known ? stored : asked.paths().get(0);
        notice = asked.troubles().stream().map("Not offered: "::concat).collect(Collectors.joining(" "));
        if (!stored.isEmpty() && !known) {
            notice = (notice + " The stored choice \"" + stored + "\" of the picker " + name + " is not among its "
                            + asked.paths().size() + "; \"" + chosen + "\" is taken.")
                    .strip();
        }
        declared = Optional.of(new Control.Picker(name, asked.label(), asked.paths(), asked.labels(), chosen));
        return chosen;
    }

    private String takeName(String what) {
        if (declaring.isEmpty()) {
            throw new Refusal(
                    "A " + what + " stands only as the whole initialiser of a variable of the page, as in double head ="
                            + " dial(…); not in a loop, a method, a lambda or an expression.");
        }
        String name = declaring;
        declaring = "";
        return name;
    }

    private double dialValue(String name, DialRequest asked) {
        double stored = dials.getOrDefault(name, Double.NaN);
        if (Double.isNaN(stored)) {
            return asked.initial();
        }
        if (stored >= asked.min() && stored <= asked.max()) {
            return stored;
        }
        notice = "The stored value " + Decimals.shortest(stored) + " of the dial " + name + " is outside "
                + Decimals.shortest(asked.min()) + ".." + Decimals.shortest(asked.max()) + "; "
                + Decimals.shortest(asked.initial()) + " is used.";
        return asked.initial();
    }
}
