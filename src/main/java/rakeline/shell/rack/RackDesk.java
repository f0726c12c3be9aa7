package rakeline.shell.rack;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.Timer;
import rakeline.desk.RackView;
import rakeline.quantity.Refusal;
import rakeline.shell.page.Background;
import rakeline.shell.page.Bench;
import rakeline.shell.page.PageModel;

/**
 * Holds the rack of the page on the bench and takes every action on it. To be used on the event thread.
 *
 * <p>A bike's numbers are written to its file when a cell is left, or when typing rests for {@value #REST_MILLIS} ms;
 * each cell is one step that can be undone. Numbers that no file can hold yet are kept with the program's state.
 */
public final class RackDesk implements Bench.View {
    static final int REST_MILLIS = 600;

    /** A view of the rack. */
    interface View {
        void showRack();

        /** Other files may lie in the folders now. */
        void listAgain();
    }

    private final Bench bench;
    private final Host host;
    private final RackLoader loader;
    private final RackKeeper keeper;
    private final Timer rest = new Timer(REST_MILLIS, event -> save());
    private final RackNow now = new RackNow();
    private final RackSteps steps;

    public RackDesk(Bench bench, Host host) {
        this.bench = bench;
        this.host = host;
        loader = new RackLoader(bench, host, new Loaded());
        keeper = new RackKeeper(bench, host, this::files, new Told());
        steps = new RackSteps(now, keeper);
        rest.setRepeats(false);
    }

    /** Takes the columns, the unit and the unfinished bikes as they were kept. */
    public void recall() {
        RackView view = host.view();
        RackModel columns = model();
        try {
            columns = view.columns().isEmpty() ? columns : columns.withColumns(view.columns());
        } catch (Refusal unknown) {
            bench.noticeWhenOpened("The columns of the rack are the usual ones again: " + unknown.getMessage());
        }
        List<RackRow> rows = new ArrayList<>(
                model().rows().stream().filter(row -> !row.path().isEmpty()).toList());
        rows.addAll(Unfinished.begun(view.unfinished()));
        now.become(columns.in(LengthUnit.of(view.lengths()).orElse(LengthUnit.MILLIMETRE))
                .withRows(rows));
    }

    void watch(View view) {
        now.watch(view);
    }

    /** Forgets all views, before others take their place. */
    public void unwatchAll() {
        now.unwatchAll();
    }

    public RackModel model() {
        return now.model();
    }

    RackSeat seat() {
        return now.seat();
    }

    RackReading reading(RackRow row) {
        return now.reading(row);
    }

    RackFiles files() {
        return loader.files();
    }

    Host host() {
        return host;
    }

    /** What one sentence says to the person. */
    void say(String sentence) {
        bench.notice(sentence);
    }

    @Override
    public void show(PageModel page) {
        loader.follow(page);
    }

    /** Reads the files again; what is typed and not written yet stays. */
    public void lookAround() {
        loader.again();
        now.listAgain();
    }

    Background study() {
        return now.study();
    }

    private List<RackRow> begun() {
        return model().rows().stream().filter(row -> row.path().isEmpty()).toList();
    }

    /** A bike as it was read, or as it stands here where it is not written yet; always with what waits. */
    private RackRow met(RackRow read) {
        Optional<RackRow> here = model().row(read.id());
        boolean ahead =
                here.filter(row -> keeper.isUnsaved(row) || keeper.isAtWork()).isPresent();
        return ahead
                ? here.get()
                : here.map(row -> read.withWaiting(row.waiting()))
                        .orElseGet(() -> Unfinished.on(read, host.view().unfinished()));
    }

    /**
     * Types in a cell; it is written when the cell is left or the typing rests.
     *
     * @throws Refusal in one sentence where it cannot stand there
     */
    void type(String id, RackColumn column, String text) {
        RackRow before = model().row(id).orElseThrow();
        if (model().isShown(before, column, text)) {
            return;
        }
        steps.change(before, model().edit(column, text), id + " " + column.key());
        rest.restart();
    }

    /** The cell is left: what was typed is one step, and is written. */
    void leave() {
        steps.pause();
        save();
    }

    /** Writes what is not in its file yet, and keeps what no file can hold. */
    public void save() {
        rest.stop();
        keepUnfinished();
        keeper.save();
    }

    private void keepUnfinished() {
        List<RackView.Unfinished> before = host.view().unfinished();
        List<RackView.Unfinished> now = Unfinished.of(model().rows(), before);
        if (!now.equals(before)) {
            host.keep(view -> view.withUnfinished(now));
        }
    }

    /**
     * Pastes a block of cells, each bike one step.
     *
     * @throws Refusal where one of them cannot stand; then nothing is pasted
     */
    void paste(int row, int column, String block) {
        List<RackRow> pasted = model().paste(row, column, block);
        for (RackRow after : pasted) {
            steps.change(model().row(after.id()).orElseThrow(), before -> after, "paste into " + after.id());
        }
        leave();
    }

    /** Whether a change of a bike can be undone. */
    public boolean canUndo() {
        return steps.canUndo();
    }

    public boolean canRedo() {
        return steps.canRedo();
    }

    public void undo() {
        steps.undo().ifPresent(row -> travelled(row, "undone"));
    }

    public void redo() {
        steps.redo().ifPresent(row -> travelled(row, "redone"));
    }

    private void travelled(RackRow row, String words) {
        bench.say(words + " in " + row.name());
        save();
    }

    void rename(String id, String name) {
        model().row(id).ifPresent(row -> steps.change(row, before -> before.named(name), "name of " + id));
        leave();
    }

    /** Begins a bike without any number. */
    void begin() {
        now.become(model().and(RackRow.begun(model().freshId(), model().freshName("New bike"))));
        save();
    }

    /** Takes bikes off the table; those with a path are to be taken off the page as well. */
    void drop(List<RackRow> rows) {
        leave(rows);
        save();
    }

    private void leave(List<RackRow> rows) {
        now.become(model().withRows(model().rows().stream()
                .filter(row -> !rows.contains(row))
                .toList()));
        keeper.leave(rows.stream().filter(row -> !row.path().isEmpty()).toList());
    }

    void choose(List<String> columns) {
        now.become(model().withColumns(columns));
        host.keep(view -> view.withColumns(columns));
    }

    public void in(LengthUnit unit) {
        now.become(model().in(unit));
        host.keep(view -> view.withLengths(unit.symbol()));
    }

    void seat(RackSeat other) {
        now.seat(other);
    }

    /** Ends what computes. */
    public void close() {
        now.close();
    }

    /** What the loader says. */
    private final class Loaded implements RackLoader.Told {
        /** What was typed on bikes that are not on the rack any more is still written. */
        @Override
        public void parting(boolean elsewhere, List<String> paths) {
            if (elsewhere) {
                now.listAgain();
                steps.forget();
            }
            keepUnfinished();
            leave(model().rows().stream()
                    .filter(row -> !row.path().isEmpty())
                    .filter(row -> elsewhere || !paths.contains(row.path()))
                    .toList());
        }

        @Override
        public void read(List<RackRow> read) {
            List<RackRow> rows =
                    new ArrayList<>(read.stream().map(row -> met(row)).toList());
            rows.addAll(begun());
            keeper.read(read);
            now.become(model().withRows(rows));
        }
    }

    /** What the keeper says. */
    private final class Told implements RackKeeper.Told {
        @Override
        public RackModel model() {
            return now.model();
        }

        @Override
        public void placed(String id, RackRow row) {
            steps.moved(id, row);
            loader.moved(id, row.path());
            now.put(id, row);
        }

        @Override
        public void overtaken(String id, RackRow row) {
            steps.forget();
            now.put(id, row);
        }
    }
}
