package rakeline.engine.jshell;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import rakeline.catalogue.Roots;
import rakeline.engine.Control;
import rakeline.prelude.DialRequest;
import rakeline.prelude.Listed;
import rakeline.prelude.PickRequest;
import rakeline.prelude.Surroundings;
import rakeline.quantity.Decimals;
import rakeline.quantity.Range;
import rakeline.quantity.Refusal;

/** What rows in the worker are given: values of dials and pickers, and places to find files. */
final class WorkerSurroundings implements Surroundings {
    private final Map<String, Double> dials = new HashMap<>();
    private final Map<String, String> picks = new HashMap<>();
    private Roots roots = Roots.bundled();
    private List<String> rack = List.of();
    private String declaring = "";
    private Optional<Control> declared = Optional.empty();
    private final List<String> notices = new ArrayList<>();

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
        notices.clear();
    }

    /** The dial or picker that was asked for since, also where the row failed over it. */
    Optional<Control> declared() {
        return declared;
    }

    String notice() {
        return String.join(" ", notices);
    }

    @Override
    public Roots roots() {
        return roots;
    }

    @Override
    public double dial(DialRequest asked) {
        String name = takeName("dial");
        double stored = dials.getOrDefault(name, Double.NaN);
        boolean taken = stored >= asked.min() && stored <= asked.max();
        double value = taken ? stored : asked.initial();
        notices.addAll(asked.notices());
        if (!taken && !Double.isNaN(stored)) {
            notices.add("The stored value " + Decimals.shown(stored) + " of the dial " + name + " is outside "
                    + Decimals.signed(new Range(asked.min(), asked.max()).toString()) + "; "
                    + Decimals.shown(asked.initial()) + " is used.");
        }
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
    public <T> Listed<T> pick(PickRequest<T> asked) {
        String name = takeName("picker");
        String stored = picks.getOrDefault(name, "");
        Listed<T> chosen = asked.at(stored);
        List<Listed<T>> choices = asked.choices(chosen);
        declared = Optional.of(new Control.Picker(
                name,
                asked.label(),
                choices.stream().map(Listed::path).toList(),
                choices.stream().map(WorkerSurroundings::label).toList(),
                chosen.path()));
        if (!chosen.isRead()) {
            throw new Refusal("The picker \"" + asked.label() + "\" stands at " + chosen.path()
                    + ", which cannot be read, and nothing is taken in its place: " + chosen.trouble());
        }
        asked.listed().stream()
                .map(Listed::trouble)
                .filter(trouble -> !trouble.isEmpty())
                .forEach(trouble -> notices.add("Not offered: " + trouble));
        if (!asked.offers(chosen)) {
            notices.add("The picker \"" + asked.label() + "\" keeps its choice, " + chosen.name() + " (" + chosen.path()
                    + "), which is not among the others offered.");
        }
        return chosen;
    }

    private static String label(Listed<?> choice) {
        return choice.isRead() ? choice.name() : choice.path() + " (cannot be read)";
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
}
