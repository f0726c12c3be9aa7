package rakeline.engine.jshell;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import rakeline.engine.Outcome;
import rakeline.engine.RowSource;
import rakeline.worksheet.Worksheet;

/** A page that is run for proofs: the real planning and reading, over rows of the small language. */
final class FakePage {
    private final Values values = new Values();
    private final FakeRows rows;
    private final PageRun run;

    FakePage(Reading reading, Set<String> stopping, Set<String> dying) {
        rows = new FakeRows(reading::read, reading.language(), values, stopping, dying);
        run = new PageRun(rows, reading.stopper(), values, event -> {});
    }

    /** What pages of a proof share: the parser, texts that it has read, and what they mean. */
    record Reading(
            Function<String, RowSource> parser,
            Map<String, RowSource> known,
            Map<String, Small.Text> language,
            Stopper stopper) {
        Reading(Function<String, RowSource> parser, Stopper stopper) {
            this(parser, new HashMap<>(), new HashMap<>(), stopper);
        }

        RowSource read(String text) {
            return known.computeIfAbsent(text, parser);
        }
    }

    /** What a run from the top gives, where these rows are stopped, or end their worker. */
    static List<Outcome> fresh(Reading reading, Worksheet page, Set<String> stopping, Set<String> dying) {
        FakePage fresh = new FakePage(reading, stopping, dying);
        fresh.show(page);
        fresh.drain(Integer.MAX_VALUE);
        return fresh.outcomes();
    }

    void show(Worksheet page) {
        run.show(page);
    }

    void look(Set<String> ids) {
        run.look(ids);
    }

    void runRow(String id) {
        run.runRow(id);
    }

    void dial(String name, double value) {
        run.dial(name, value);
    }

    /** Runs so many of the rows that are to run, at most; breaks them off where a trap springs. */
    void drain(int most) {
        for (int i = 0; i < most && run.hasWork(); i++) {
            run.runNext();
            Optional<FakeRows.End> end = rows.sprung();
            if (end.equals(Optional.of(FakeRows.End.STOP))) {
                run.abandon();
            }
        }
    }

    void trap(int steps, FakeRows.End end) {
        rows.trap(steps, end);
    }

    void disarm() {
        rows.disarm();
    }

    boolean hasWork() {
        return run.hasWork();
    }

    List<Outcome> outcomes() {
        return run.outcomes();
    }
}
