package rakeline.shell.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import rakeline.engine.Session;
import rakeline.worksheet.History;
import rakeline.worksheet.Row;
import rakeline.worksheet.Worksheet;

/**
 * Holds the one model that the window shows, takes every action on it, and tells the views. To be used on the event
 * thread alone.
 */
public final class Bench {
    /** A view of the page. */
    public interface View {
        void show(PageModel now);
    }

    private final Function<Session.Settings, Session> sessions;
    private final Supplier<Session.Settings> preferred;
    private final List<View> views = new ArrayList<>();
    private PageModel model = PageModel.of(Worksheet.empty("Untitled"), new Origin.New(), false);
    private Optional<Runner> runner = Optional.empty();
    private String greeting = "";
    private boolean leftAlone = true;
    private Set<String> sight = Set.of();
    private int openings;

    /**
     * @param sessions starts a session; may take its time, it is called off the event thread
     * @param preferred what rows may take, as preferred when a page is opened
     */
    public Bench(Function<Session.Settings, Session> sessions, Supplier<Session.Settings> preferred) {
        this.sessions = sessions;
        this.preferred = preferred;
    }

    public PageModel model() {
        return model;
    }

    /** How many pages were opened so far, so that one can be told from the next. */
    public int openings() {
        return openings;
    }

    /** Adds a view, which is shown the model at once. */
    public void watch(View view) {
        views.add(view);
        view.show(model);
    }

    /** Forgets a view. */
    public void unwatch(View view) {
        views.remove(view);
    }

    /** Forgets all views, before others take their place. */
    public void unwatchAll() {
        views.clear();
    }

    private void become(PageModel next) {
        model = next;
        List.copyOf(views).forEach(view -> view.show(next));
    }

    /** Puts another page on the bench. */
    public void open(Worksheet page, Origin origin, boolean allowed) {
        stopSession();
        leftAlone = false;
        openings++;
        become(PageModel.of(page, origin, allowed).noticing(greeting));
        greeting = "";
        if (allowed) {
            startSession();
        }
    }

    /** Puts a sentence before the reader once the next page is there, after those that wait already. */
    public void noticeWhenOpened(String sentence) {
        greeting = (greeting + " " + sentence).strip();
    }

    /** Whether a person is still to say if this page may run. */
    public boolean asksToRun() {
        return !model.allowed() && !leftAlone;
    }

    /** Asks no more whether this page may run, until something of it is to be run. */
    public void leaveAlone() {
        leftAlone = true;
        become(model);
    }

    /** Tells the session to run something; where the page may not run yet, asks for that once more. */
    private void run(Consumer<Session> what) {
        if (!model.allowed()) {
            leftAlone = false;
            notice("");
        }
        become(model.resting(false));
        tell(what);
    }

    /** Lets the rows of this page run. */
    public void allow() {
        become(model.allowing(true));
        startSession();
    }

    /** Ends what runs, until it is allowed again. */
    public void withhold() {
        stopSession();
        become(model.allowing(false));
    }

    /** These rows are in sight. */
    public void look(Set<String> ids) {
        if (!ids.equals(sight)) {
            sight = Set.copyOf(ids);
            tell(session -> session.look(ids));
        }
    }

    private void startSession() {
        Session.Settings usual = preferred.get();
        Session.Settings settings = model.origin().folder().map(usual::in).orElse(usual);
        Listening listening = new Listening();
        Runner started = new Runner(sessions, settings, listening);
        listening.runner = Optional.of(started);
        runner = Optional.of(started);
        Set<String> seen = sight;
        tell(session -> session.look(seen));
        hand();
    }

    private void stopSession() {
        runner.ifPresent(Runner::close);
        runner = Optional.empty();
    }

    /** Ends what runs. */
    public void close() {
        stopSession();
    }

    /** Types in a row; it runs when the typing rests, when the row is left, or when it is asked to. */
    public void type(String id, String text) {
        become(model.with(model.history().edit("typing " + id, model.page().withText(id, text)))
                .saying("typed in " + nameOf(id)));
    }

    private String nameOf(String id) {
        String name = model.standing(id).name();
        return name.isEmpty() ? "a row" : name;
    }

    /** Ends a burst of typing or a drag. */
    public void pause() {
        become(model.with(model.history().pause()));
    }

    /** Hands the page to the session, where it was typed in since. */
    public void commit() {
        pause();
        if (!model.handed().equals(model.page())) {
            hand();
        }
    }

    private void hand() {
        Worksheet page = model.page();
        become(model.handing(page));
        tell(session -> session.show(page));
    }

    private void tell(Consumer<Session> what) {
        runner.ifPresent(running -> running.tell(what));
    }

    /** One action on the rows, one step to undo. */
    public void act(String words, UnaryOperator<Worksheet> edit) {
        become(model.with(model.history().pause().edit(edited(edit))).saying(words));
        commit();
    }

    /** An edit of the rack leaves every picker of bikes where it stands. */
    private Worksheet edited(UnaryOperator<Worksheet> edit) {
        Worksheet next = edit.apply(model.page());
        return next.rack().equals(model.page().rack()) ? next : edit.apply(model.choosingBikes(model.page()));
    }

    public void undo() {
        travel(model.history().undo(), "undone");
    }

    public void redo() {
        travel(model.history().redo(), "redone");
    }

    private void travel(History history, String words) {
        int place = model.selected().map(model.page()::indexOf).orElse(0);
        become(model.with(history).saying(words));
        if (!isThere(model.selected())) {
            become(model.selecting(nearest(place)));
        } else if (!isThere(model.anchor())) {
            become(model.selecting(model.selected()));
        }
        hand();
    }

    private Optional<String> nearest(int place) {
        List<Row> rows = model.rows();
        return rows.isEmpty()
                ? Optional.empty()
                : Optional.of(rows.get(Math.max(0, Math.min(place, rows.size() - 1)))
                        .id());
    }

    private boolean isThere(Optional<String> id) {
        return id.flatMap(model.page()::row).isPresent();
    }

    /**
     * Moves a dial.
     *
     * @param words what to say of it, as {@code Head angle 71.3°}
     */
    public void dial(String name, double value, String words) {
        if (!model.handed().rows().equals(model.page().rows())) {
            commit();
        }
        Worksheet moved = model.page().withDial(name, value);
        become(model.with(model.history().edit("dial " + name, moved))
                .handing(moved)
                .saying(words));
        tell(session -> session.dial(name, value));
    }

    /** Chooses in a picker. */
    public void pick(String name, String path, String words) {
        commit();
        Worksheet chosen = model.page().withPick(name, path);
        become(model.with(model.history().edit(chosen)).handing(chosen).saying(words));
        tell(session -> session.pick(name, path));
    }

    /** Selects a row, and no others. */
    public void select(String id) {
        if (!model.selection().equals(List.of(id))) {
            become(model.selecting(Optional.of(id)));
        }
    }

    /** Selects all rows from where the selection began to this one. */
    public void extend(String id) {
        become(model.extending(id));
    }

    /** Opens the answer that a folded row belongs to, or closes it again. */
    public void turnAnswer(String id) {
        become(model.turning(id));
    }

    /** Opens a row's answer, if it is closed. */
    public void openAnswer(String id) {
        if (model.isHidden(id)) {
            turnAnswer(id);
        }
    }

    /** Opens all answers, or closes them where none is closed. */
    public void turnAnswers() {
        become(model.turningAll());
    }

    public void view(Worksheet.View view) {
        commit();
        become(model.in(view));
    }

    public void runSelected() {
        commit();
        model.selected().ifPresent(id -> run(session -> session.runRow(id)));
    }

    public void runFromSelected() {
        commit();
        model.selected().ifPresent(id -> run(session -> session.runFrom(id)));
    }

    public void runAll() {
        commit();
        run(Session::runAll);
    }

    public void stop() {
        tell(Session::stop);
    }

    /** This version of the page now stands in a file. */
    public void saved(Origin origin, Worksheet version, String words) {
        become(model.savedTo(origin, version).saying(words));
    }

    /** Puts one sentence before the reader; empty puts it away. */
    public void notice(String sentence) {
        become(model.noticing(sentence));
    }

    public void say(String words) {
        become(model.saying(words));
    }

    /** Takes in what a session says, unless another has taken its place. */
    private final class Listening implements Runner.Hearer {
        private Optional<Runner> runner = Optional.empty();

        @Override
        public void heard(List<Session.Event> events) {
            if (Bench.this.runner.equals(runner)) {
                PageModel next = model;
                for (Session.Event event : events) {
                    next = after(next, event);
                }
                become(next);
            }
        }

        @Override
        public void failed(Throwable failure) {
            String why = failure.getMessage() == null ? failure.toString() : failure.getMessage();
            become(model.at(Optional.empty()).resting(true).noticing("The page cannot run: " + why));
        }

        private PageModel after(PageModel before, Session.Event event) {
            if (event instanceof Session.Event.Row row) {
                return before.after(row.outcome());
            }
            if (event instanceof Session.Event.Progress progress) {
                return progress.done() < progress.total()
                        ? before.resting(false)
                                .at(Optional.of(new PageModel.Progress(progress.done(), progress.total())))
                        : before.at(Optional.empty());
            }
            if (event instanceof Session.Event.Broken broken) {
                return before.at(Optional.empty()).resting(true).noticing(broken.sentence());
            }
            return event instanceof Session.Event.Replaced replaced
                    ? before.noticing(replaced.sentence())
                    : before.at(Optional.empty()).resting(true);
        }
    }
}
