package rakeline.engine.jshell;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import rakeline.engine.Control;
import rakeline.engine.Layout;
import rakeline.engine.PageRow;
import rakeline.engine.Result;
import rakeline.engine.RowSource;
import rakeline.engine.SnippetSource;
import rakeline.engine.State;

/**
 * Runs rows of the small language in a memory of its own, as a compiler and a worker would: a name that is compiled
 * again gets another place, code goes on to use the places that it was compiled against, and another worker remembers
 * nothing. It can be made to stop or to lose its worker when so many steps have been run.
 */
final class FakeRows implements Rows {
    /** How a row is broken off. */
    enum End {
        STOP,
        DEATH
    }

    /** A row as compiled. */
    private record Known(List<Step> steps, Map<String, Integer> needs, boolean complete, Optional<String> rejection) {}

    private record Step(Small.Compiled compiled, SnippetSource source) {
        boolean isShown() {
            return compiled.typed().type() != Small.Sort.NONE;
        }
    }

    private final Function<String, RowSource> reader;
    private final Map<String, Small.Text> language;
    private final Values values;
    private final Set<String> stopping;
    private final Set<String> dying;
    private final Small.Scope scope = new Small.Scope();
    private final Map<String, Known> known = new HashMap<>();
    private final Map<String, Boolean> changing = new HashMap<>();
    private final Versions versions = new Versions();
    private final Set<String> told = new HashSet<>();
    private Small.Machine machine = new Small.Machine();
    private Optional<End> trap = Optional.empty();
    private Optional<End> sprung = Optional.empty();
    private int stepsLeft;

    /**
     * @param language what each text of a row means
     * @param stopping rows that are stopped at their first step
     * @param dying rows that end the worker at their first step
     */
    FakeRows(
            Function<String, RowSource> reader,
            Map<String, Small.Text> language,
            Values values,
            Set<String> stopping,
            Set<String> dying) {
        this.reader = reader;
        this.language = language;
        this.values = values;
        this.stopping = stopping;
        this.dying = dying;
    }

    /** From now on, whatever runs is broken off once, when so many steps have been run. */
    void trap(int steps, End end) {
        stepsLeft = steps;
        trap = Optional.of(end);
    }

    /** Sets no trap any more. */
    void disarm() {
        trap = Optional.empty();
    }

    /** How a trap ended the last row, if it did; told once. */
    Optional<End> sprung() {
        Optional<End> happened = sprung;
        sprung = Optional.empty();
        return happened;
    }

    @Override
    public RowSource read(String text) {
        return reader.apply(text);
    }

    @Override
    public void begin(PageRow row) {}

    @Override
    public Run run(PageRow row, Layout page) {
        return canRepeat(row.id()) ? replay(row, page) : compile(row, page);
    }

    @Override
    public Run replay(PageRow row, Layout page) {
        machine.beginRow();
        Telling telling = new Telling(row);
        for (Step step : known.get(row.id()).steps()) {
            if (!telling.goesOn(step)) {
                return telling.run();
            }
        }
        known.get(row.id()).rejection().ifPresent(sentence -> telling.end(State.FAILED, sentence));
        return telling.run();
    }

    private Run compile(PageRow row, Layout page) {
        forget(row.id());
        machine.beginRow();
        Telling telling = new Telling(row);
        List<Step> steps = new ArrayList<>();
        List<Small.Piece> pieces = language.get(row.source().text()).pieces();
        boolean goesOn = true;
        for (int i = 0; goesOn && i < pieces.size(); i++) {
            Optional<Step> step = compile(pieces.get(i), row.source().snippets().get(i), telling);
            step.ifPresent(steps::add);
            goesOn = step.isPresent() && telling.goesOn(step.get());
            step.ifPresent(compiled -> noteChange(compiled, telling));
        }
        known.put(row.id(), new Known(steps, versions.needed(row, page), goesOn, telling.rejection()));
        return telling.run();
    }

    private Optional<Step> compile(Small.Piece piece, SnippetSource source, Telling telling) {
        try {
            Small.Compiled compiled = piece.compiled(scope);
            compiled.variable().ifPresent(slot -> scope.declare(compiled.name(), slot));
            compiled.method().ifPresent(method -> scope.declare(compiled.name(), method));
            return Optional.of(new Step(compiled, source));
        } catch (Small.Unacceptable e) {
            telling.reject("Java does not accept this: " + e.getMessage());
            return Optional.empty();
        }
    }

    /** As far as a run shows: numbers and words never change. */
    private void noteChange(Step step, Telling telling) {
        step.compiled().variable().ifPresent(slot -> {
            boolean ran = telling.hasRun(step);
            boolean isFunction = slot.type() == Small.Sort.FUNCTION;
            changing.put(step.compiled().name(), !ran || isFunction || Showing.canChange(machine.get(slot)));
        });
    }

    @Override
    public boolean canRepeat(String id) {
        Known row = known.get(id);
        return row != null && row.complete() && versions.stand(row.needs());
    }

    @Override
    public boolean isKnown(String id) {
        return known.containsKey(id);
    }

    @Override
    public boolean changing(String variable) {
        return changing.getOrDefault(variable, true);
    }

    @Override
    public void forget(List<String> idsInPageOrder) {
        idsInPageOrder.forEach(this::forget);
    }

    private void forget(String id) {
        versions.next(id);
        Known before = known.remove(id);
        if (before != null) {
            before.steps().forEach(this::forget);
        }
    }

    private void forget(Step step) {
        Small.Compiled compiled = step.compiled();
        compiled.variable().ifPresent(scope::remove);
        compiled.method().ifPresent(scope::remove);
        changing.remove(compiled.name());
    }

    @Override
    public void replaceWorker() {
        machine = new Small.Machine();
        told.forEach(this::tell);
    }

    @Override
    public void startOver() {
        List.copyOf(known.keySet()).forEach(this::forget);
        replaceWorker();
    }

    @Override
    public void tell(Set<String> names) {
        told.addAll(names);
        names.forEach(this::tell);
    }

    private void tell(String dial) {
        machine.surroundings().setDial(dial, values.dial(dial));
    }

    @Override
    public void tellRack() {}

    @Override
    public boolean uses(Worker worker) {
        return true;
    }

    /** Gathers what a row's steps bring, until one of them ends the row. */
    private final class Telling {
        private final PageRow row;
        private final List<Control> controls = new ArrayList<>();
        private final Set<Step> ran = new HashSet<>();
        private Optional<Small.Slot> last = Optional.empty();
        private Optional<Result> result = Optional.empty();
        private String notice = "";
        private Optional<Run> ended = Optional.empty();
        private Optional<String> rejection = Optional.empty();

        private Telling(PageRow row) {
            this.row = row;
        }

        boolean hasRun(Step step) {
            return ran.contains(step);
        }

        boolean goesOn(Step step) {
            if (isBrokenOff()) {
                return false;
            }
            try {
                Object value = step.compiled().typed().code().run(machine);
                keep(step, value);
                return true;
            } catch (ArithmeticException | IndexOutOfBoundsException | UnsupportedOperationException e) {
                return end(State.FAILED, "Java threw " + e.getClass());
            } catch (Small.Stopped e) {
                return breakOff(End.STOP);
            }
        }

        private void keep(Step step, Object value) {
            ran.add(step);
            result = step.isShown() ? Optional.of(Showing.of(value)) : Optional.empty();
            if (step.source().control().isPresent()) {
                machine.surroundings().declared().ifPresent(controls::add);
                notice = machine.surroundings().notice();
            }
            boolean isVariable = step.source().defines().stream()
                    .anyMatch(definition -> definition.kind() == rakeline.engine.Definition.Kind.VARIABLE);
            last = isVariable ? step.compiled().variable() : last;
        }

        private boolean isBrokenOff() {
            if (stopping.contains(row.id())) {
                return !breakOff(End.STOP);
            }
            if (dying.contains(row.id())) {
                return !breakOff(End.DEATH);
            }
            if (trap.isPresent() && stepsLeft-- == 0) {
                sprung = trap;
                trap = Optional.empty();
                return !breakOff(sprung.get());
            }
            return false;
        }

        private boolean breakOff(End end) {
            return end == End.STOP
                    ? end(State.STOPPED, "This row was stopped.")
                    : end(State.FAILED, "This row ended its worker.");
        }

        void reject(String sentence) {
            rejection = Optional.of(sentence);
            end(State.FAILED, sentence);
        }

        Optional<String> rejection() {
            return rejection;
        }

        boolean end(State state, String message) {
            Optional<String> lost =
                    message.endsWith("its worker.") ? Optional.of("ended its worker") : Optional.empty();
            ended = Optional.of(Run.ended(state, message, printed(), controls, lost));
            return false;
        }

        Run run() {
            return ended.orElseGet(() -> Run.fresh(
                    notice,
                    printed(),
                    result.or(() -> last.map(slot -> Showing.of(machine.get(slot)))),
                    controls,
                    Map.of()));
        }

        private Printed printed() {
            Printed printed = new Printed();
            printed.add(machine.printed().getBytes(StandardCharsets.UTF_8));
            return printed;
        }
    }
}
