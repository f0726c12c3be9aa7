package rakeline.shell.page;

import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import rakeline.catalogue.Bundled;
import rakeline.engine.Control;
import rakeline.engine.Outcome;
import rakeline.engine.Result;
import rakeline.engine.State;
import rakeline.figure.Figure;
import rakeline.worksheet.Answer;
import rakeline.worksheet.History;
import rakeline.worksheet.Row;
import rakeline.worksheet.Worksheet;

/**
 * All that the window shows of one page. Never changes: an action leads to the next model, and the views show that.
 *
 * @param history the page and the steps that led to it
 * @param handed the page as the session has it; rows typed in since are out of date
 * @param selected the id of the row at hand
 * @param anchor the id of the row from which on rows are selected, up or down to the one at hand
 * @param allowed whether its rows may run
 * @param progress how far the rows that are to run have run; none when nothing runs
 * @param said what changed last, in a few words
 * @param notice one sentence that stays until it is put away, or empty
 * @param figures what each row showed when it last ran to its end, of those that showed a figure
 * @param rested whether the session has nothing left to do of what it was told
 * @param opened the ids of folded rows that the reader has opened
 */
public record PageModel(
        Origin origin,
        History history,
        Worksheet handed,
        Map<String, Outcome> standings,
        Optional<String> selected,
        Optional<String> anchor,
        boolean allowed,
        Optional<Progress> progress,
        String said,
        String notice,
        Map<String, Figure> figures,
        boolean rested,
        Set<String> opened) {

    /** So many of the rows that are to run have run. */
    public record Progress(int done, int total) {}

    public PageModel {
        standings = Collections.unmodifiableMap(new HashMap<>(standings));
        opened = Set.copyOf(opened);
        figures = Map.copyOf(figures);
    }

    /** A page just opened. */
    public static PageModel of(Worksheet page, Origin origin, boolean allowed) {
        return new PageModel(
                origin,
                History.of(page),
                page,
                Map.of(),
                page.rows().stream().map(Row::id).findFirst(),
                page.rows().stream().map(Row::id).findFirst(),
                allowed,
                Optional.empty(),
                "",
                "",
                Map.of(),
                false,
                Set.of());
    }

    public Worksheet page() {
        return history.now();
    }

    public Worksheet.View view() {
        return page().view();
    }

    public List<Row> rows() {
        return page().rows();
    }

    public Optional<Row> selectedRow() {
        return selected.flatMap(page()::row);
    }

    /** Whether rows run now. */
    public boolean isRunning() {
        return progress.isPresent()
                || standings.values().stream().anyMatch(standing -> standing.state() == State.RUNNING);
    }

    /** How a snippet stands; what was typed since the last run makes its row, and what stands below it, out of date. */
    public Outcome standing(String id) {
        return allowed ? standingOfAllowed(id) : Standing.untried(id).in(waits(id) ? State.WAITING : State.NOT_RUN);
    }

    /** Whether a row is folded and not opened, so that a reader sees nothing of it. */
    public boolean isHidden(String id) {
        return !opened.contains(id) && page().row(id).filter(Row::folded).isPresent();
    }

    /** Opens the answer that a row belongs to, or closes it again. */
    PageModel turning(String id) {
        List<String> turned = Answer.holding(page(), id).map(Answer::ids).orElse(List.of());
        return opening(isHidden(id), turned);
    }

    /** Opens all answers, or closes them where none is closed. */
    PageModel turningAll() {
        List<String> all = Answer.of(page()).stream()
                .flatMap(answer -> answer.ids().stream())
                .toList();
        return opening(all.stream().anyMatch(this::isHidden), all);
    }

    private PageModel opening(boolean open, List<String> rows) {
        Set<String> now = new HashSet<>(opened);
        if (open) {
            now.addAll(rows);
        } else {
            rows.forEach(now::remove);
        }
        return new PageModel(
                origin, history, handed, standings, selected, anchor, allowed, progress, said, notice, figures, rested,
                now);
    }

    private boolean waits(String id) {
        return page().row(id)
                .filter(row -> row instanceof Row.Snippet snippet && snippet.waits())
                .isPresent();
    }

    private Outcome last(String id) {
        return standings.getOrDefault(id, Standing.untried(id));
    }

    private Outcome standingOfAllowed(String id) {
        Outcome standing = last(id);
        boolean stale = standing.state() == State.FRESH && isBelowPending(id);
        return stale ? standing.in(State.OUT_OF_DATE) : standing;
    }

    private boolean isBelowPending(String id) {
        if (page().rows() == handed.rows()) {
            return false;
        }
        return rows().stream().takeWhile(row -> !row.id().equals(id)).anyMatch(this::isPending)
                || page().row(id).map(this::isPending).orElse(false);
    }

    /** Whether a snippet was typed in since the session was handed the page. */
    public boolean isPending(String id) {
        return page().row(id).filter(this::isPending).isPresent();
    }

    private boolean isPending(Row row) {
        return row instanceof Row.Snippet && !handed.row(row.id()).equals(Optional.of(row));
    }

    /** How the snippets stand, in page order, as a session would say it. */
    public List<Outcome> outcomes() {
        return rows().stream()
                .filter(Row.Snippet.class::isInstance)
                .map(row -> standing(row.id()))
                .toList();
    }

    /** Whether every row stands as it will stay: run, failed, stopped, waiting, given up or without what it needs. */
    public boolean isSettled() {
        return rested && !isRunning() && rows().stream().noneMatch(this::isPending);
    }

    /** Whether nothing would be lost; where a dial or picker of a bundled page stands is no work. */
    public boolean isSaved() {
        return origin instanceof Origin.Bundled
                ? history.isSaved(page -> page.withDials(Map.of()).withPicks(Map.of()))
                : history.isSaved();
    }

    /** A version of the page with all that its pickers stand at, also where nobody has chosen yet. */
    public Worksheet choosing(Worksheet version) {
        return choosing(version, picker -> true);
    }

    /** The same for the pickers of bikes, which stand at another one once the rack changes. */
    Worksheet choosingBikes(Worksheet version) {
        return choosing(version, picker -> picker.chosen().endsWith(Bundled.BIKES.ending()));
    }

    private Worksheet choosing(Worksheet version, Predicate<Control.Picker> which) {
        Worksheet chosen = version;
        for (Control control : controls()) {
            if (control instanceof Control.Picker picker
                    && which.test(picker)
                    && !chosen.picks().containsKey(picker.name())) {
                chosen = chosen.withPick(picker.name(), picker.chosen());
            }
        }
        return chosen;
    }

    /** Dials and pickers in page order, at the values that the page holds. */
    public List<Control> controls() {
        return rows().stream()
                .flatMap(row -> last(row.id()).controls().stream())
                .map(this::atPageValue)
                .toList();
    }

    private Control atPageValue(Control control) {
        if (control instanceof Control.Dial dial) {
            Double stored = page().dials().get(dial.name());
            return stored == null || stored < dial.min() || stored > dial.max() ? dial : at(dial, stored);
        }
        Control.Picker picker = (Control.Picker) control;
        String stored = page().picks().getOrDefault(picker.name(), picker.chosen());
        return picker.paths().contains(stored)
                ? new Control.Picker(picker.name(), picker.label(), picker.paths(), picker.labels(), stored)
                : picker;
    }

    private static Control.Dial at(Control.Dial dial, double value) {
        return new Control.Dial(
                dial.name(),
                dial.label(),
                dial.key(),
                dial.unit(),
                dial.min(),
                dial.max(),
                dial.step(),
                dial.initial(),
                dial.own(),
                value,
                dial.decimals());
    }

    /** How many snippets stand in each state, in the order of the states. */
    public Map<State, Long> counts() {
        return rows().stream()
                .filter(Row.Snippet.class::isInstance)
                .collect(Collectors.groupingBy(
                        row -> standing(row.id()).state(),
                        () -> new java.util.EnumMap<>(State.class),
                        Collectors.counting()));
    }

    PageModel with(History newHistory) {
        return new PageModel(
                origin,
                newHistory,
                handed,
                standings,
                selected,
                anchor,
                allowed,
                progress,
                said,
                notice,
                figures,
                rested,
                opened);
    }

    PageModel handing(Worksheet page) {
        return new PageModel(
                origin, history, page, standings, selected, anchor, allowed, progress, said, notice, figures, false,
                opened);
    }

    PageModel after(Outcome outcome) {
        Map<String, Outcome> changed = new LinkedHashMap<>(standings);
        changed.put(outcome.id(), Standing.after(last(outcome.id()), outcome));
        return new PageModel(
                origin,
                history,
                handed,
                changed,
                selected,
                anchor,
                allowed,
                progress,
                said,
                notice,
                figuresAfter(outcome),
                rested,
                opened);
    }

    private Map<String, Figure> figuresAfter(Outcome outcome) {
        if (outcome.state() != State.FRESH) {
            return figures;
        }
        Map<String, Figure> changed = new HashMap<>(figures);
        changed.remove(outcome.id());
        figure(outcome).ifPresent(figure -> changed.put(outcome.id(), figure));
        return changed;
    }

    private static Optional<Figure> figure(Outcome standing) {
        return standing.result().filter(Result.Shown.class::isInstance).map(result -> ((Result.Shown) result).figure());
    }

    /** The figure that a row showed when it last ran to its end, where it is not fresh and has no result of its own now. */
    public Optional<Figure> figureBefore(String id) {
        Outcome standing = standing(id);
        return allowed && standing.state() != State.FRESH && standing.result().isEmpty()
                ? Optional.ofNullable(figures.get(id))
                : Optional.empty();
    }

    /** Whether what a row shows is of before, and no run of it is on its way. */
    public boolean isOld(String id) {
        boolean comes = !rested && !isBelowPending(id);
        return (standing(id).state() == State.OUT_OF_DATE && !comes)
                || figureBefore(id).isPresent();
    }

    /** The same, told something by a person or having nothing left to do. */
    PageModel resting(boolean nowRested) {
        return new PageModel(
                origin, history, handed, standings, selected, anchor, allowed, progress, said, notice, figures,
                nowRested, opened);
    }

    PageModel selecting(Optional<String> id) {
        return new PageModel(
                origin, history, handed, standings, id, id, allowed, progress, said, notice, figures, rested, opened);
    }

    PageModel extending(String id) {
        return new PageModel(
                origin,
                history,
                handed,
                standings,
                Optional.of(id),
                anchor,
                allowed,
                progress,
                said,
                notice,
                figures,
                rested,
                opened);
    }

    /** The ids of the rows that are selected, in page order: the one at hand and all up to the anchor. */
    public List<String> selection() {
        List<String> ids = rows().stream().map(Row::id).toList();
        int lead = selected.map(ids::indexOf).orElse(-1);
        int other = anchor.map(ids::indexOf).filter(place -> place >= 0).orElse(lead);
        return lead < 0 ? List.of() : ids.subList(Math.min(lead, other), Math.max(lead, other) + 1);
    }

    PageModel in(Worksheet.View view) {
        return new PageModel(
                origin,
                history.viewed(view),
                handed.withView(view),
                standings,
                selected,
                anchor,
                allowed,
                progress,
                said,
                notice,
                figures,
                rested,
                opened);
    }

    PageModel allowing(boolean nowAllowed) {
        return new PageModel(
                origin,
                history,
                handed,
                standings,
                selected,
                anchor,
                nowAllowed,
                progress,
                said,
                notice,
                figures,
                rested,
                opened);
    }

    PageModel at(Optional<Progress> newProgress) {
        return new PageModel(
                origin,
                history,
                handed,
                standings,
                selected,
                anchor,
                allowed,
                newProgress,
                said,
                notice,
                figures,
                rested,
                opened);
    }

    PageModel saying(String words) {
        return new PageModel(
                origin, history, handed, standings, selected, anchor, allowed, progress, words, notice, figures, rested,
                opened);
    }

    PageModel noticing(String sentence) {
        return new PageModel(
                origin, history, handed, standings, selected, anchor, allowed, progress, said, sentence, figures,
                rested, opened);
    }

    PageModel savedTo(Origin newOrigin, Worksheet version) {
        return new PageModel(
                newOrigin,
                history.saved(version.withView(view())),
                handed,
                standings,
                selected,
                anchor,
                allowed,
                progress,
                said,
                notice,
                figures,
                rested,
                opened);
    }
}
