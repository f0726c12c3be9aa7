package rakeline.engine.jshell;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import rakeline.engine.Outcome;
import rakeline.engine.State;
import rakeline.worksheet.History;
import rakeline.worksheet.Row;
import rakeline.worksheet.Worksheet;

/** Lives through a history of deeds, and compares the page after each with a run from the top. */
final class FakeHistory {
    private final FakePage.Reading reading;
    private final FakePage page;
    private final List<Worksheet> versions = new ArrayList<>();
    private History history;
    private int at;

    private FakeHistory(FakePage.Reading reading, Worksheet start) {
        this.reading = reading;
        history = History.of(start);
        versions.add(start);
        page = new FakePage(reading, Set.of(), Set.of());
    }

    /** What is wrong after which deed, if anything is. */
    static Optional<String> failure(FakePage.Reading reading, long seed, List<Deed> deeds) {
        FakeHistory lived = new FakeHistory(reading, Deed.start(seed, reading.language()));
        lived.page.show(lived.history.now());
        lived.page.drain(Integer.MAX_VALUE);
        Optional<String> wrong = lived.wrong();
        for (int i = 0; i < deeds.size() && wrong.isEmpty(); i++) {
            Deed deed = deeds.get(i);
            Worksheet before = lived.history.now();
            wrong = lived.survived(deed)
                    .or(lived::wrong)
                    .map(what -> words(before) + "then " + deed + "\n" + words(lived.history.now()) + what);
        }
        return wrong;
    }

    static String words(Worksheet page) {
        return page.rows().stream()
                .map(row -> row.id() + ": " + row.text().replace("\n", " \\ ") + "\n")
                .collect(Collectors.joining());
    }

    /** Nothing that a history does may break the program. */
    private Optional<String> survived(Deed deed) {
        try {
            return live(deed);
        } catch (RuntimeException e) {
            return Optional.of(e + " at " + Arrays.toString(e.getStackTrace()));
        }
    }

    private Optional<String> live(Deed deed) {
        Random random = new Random(deed.seed() + 1);
        edit(deed);
        page.look(seen(new Random(deed.seed() + 2)));
        trap(deed, random);
        page.show(history.now());
        Optional<String> asked = deed.run(history.now());
        asked.ifPresent(page::runRow);
        boolean whole = asked.isPresent() || random.nextInt(4) > 0;
        page.drain(whole ? Integer.MAX_VALUE : random.nextInt(4));
        page.disarm();
        return history.now().equals(versions.get(at))
                ? Optional.empty()
                : Optional.of("undo does not bring back " + versions.get(at));
    }

    /** A row that a person sees. */
    private Set<String> seen(Random random) {
        List<String> ids = history.now().rows().stream().map(Row::id).toList();
        return ids.isEmpty() ? Set.of() : Set.of(ids.get(random.nextInt(ids.size())));
    }

    private void edit(Deed deed) {
        switch (deed.kind()) {
            case UNDO -> {
                history = history.undo();
                at = Math.max(0, at - 1);
            }
            case REDO -> {
                history = history.redo();
                at = Math.min(versions.size() - 1, at + 1);
            }
            case RUN, STOP, DEATH -> {}
            default -> edit(deed.applied(history.now(), reading.language()));
        }
    }

    private void edit(Worksheet next) {
        if (!next.equals(history.now())) {
            history = history.edit(next);
            versions.subList(at + 1, versions.size()).clear();
            versions.add(next);
            at++;
        }
    }

    /** Something is broken off while rows run: a dial is moved so that some do, and moved at once. */
    private void trap(Deed deed, Random random) {
        if (deed.kind() == Deed.Kind.STOP || deed.kind() == Deed.Kind.DEATH) {
            edit(new Deed(random.nextBoolean() ? Deed.Kind.DIAL : Deed.Kind.EDIT, deed.at(), deed.seed()));
            page.trap(random.nextInt(10), deed.kind() == Deed.Kind.STOP ? FakeRows.End.STOP : FakeRows.End.DEATH);
        }
        if (deed.kind() == Deed.Kind.DIAL) {
            history.now().dials().forEach(page::dial);
        }
    }

    private Optional<String> wrong() {
        if (page.hasWork()) {
            return Optional.empty();
        }
        List<Outcome> found = page.outcomes();
        List<Outcome> fresh = FakePage.fresh(reading, history.now(), standing(found, State.STOPPED, ""), dead(found));
        return Difference.between(found, fresh);
    }

    private static Set<String> dead(List<Outcome> found) {
        return standing(found, State.FAILED, "This row ended its worker.");
    }

    private static Set<String> standing(List<Outcome> outcomes, State state, String start) {
        return outcomes.stream()
                .filter(outcome -> outcome.state() == state && outcome.message().startsWith(start))
                .map(Outcome::id)
                .collect(Collectors.toSet());
    }
}
