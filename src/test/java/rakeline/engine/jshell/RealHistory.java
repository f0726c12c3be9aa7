package rakeline.engine.jshell;

import java.io.DataInputStream;
import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.net.SocketTimeoutException;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import rakeline.engine.Outcome;
import rakeline.engine.State;
import rakeline.worksheet.History;
import rakeline.worksheet.Row;
import rakeline.worksheet.Worksheet;

/** Lives through a history of deeds in a real process, and compares the page after each with the small language. */
final class RealHistory {
    private static final int PATIENCE_MILLIS = 60_000;

    private final FakePage.Reading reading;
    private final Running page;
    private History history;

    private RealHistory(FakePage.Reading reading, Running page, Worksheet start) {
        this.reading = reading;
        this.page = page;
        history = History.of(start);
    }

    /** What is wrong after which deed, if anything is. */
    static Optional<String> failure(FakePage.Reading reading, Running page, long seed, List<Deed> deeds)
            throws InterruptedException, IOException {
        RealHistory lived = new RealHistory(reading, page, Deed.start(seed, reading.language()));
        page.run(lived.history.now());
        Optional<String> wrong = lived.wrong(Set.of(), Set.of());
        for (int i = 0; i < deeds.size() && wrong.isEmpty(); i++) {
            Deed deed = deeds.get(i);
            Worksheet before = lived.history.now();
            wrong = lived.live(deed).map(what -> FakeHistory.words(before) + "then " + deed + "\n" + what);
        }
        return wrong;
    }

    private Optional<String> live(Deed deed) throws InterruptedException, IOException {
        switch (deed.kind()) {
            case UNDO -> history = history.undo();
            case REDO -> history = history.redo();
            case STOP, DEATH -> {
                return brokenOff(deed);
            }
            case DIAL -> dial(deed);
            default -> edit(deed);
        }
        page.run(history.now());
        Optional<String> asked = deed.run(history.now());
        asked.ifPresent(page.session()::runRow);
        page.settle();
        return wrong(Set.of(), Set.of());
    }

    private void edit(Deed deed) {
        history = history.edit(deed.applied(history.now(), reading.language()));
    }

    /** As under a hand: the dial moves before the document does. */
    private void dial(Deed deed) {
        edit(deed);
        history.now().dials().forEach(page.session()::dial);
    }

    /** A row that changes something, calls, and is stopped or killed at that step; then it is gone for good. */
    private Optional<String> brokenOff(Deed deed) throws InterruptedException, IOException {
        if (history.now().rows().isEmpty()) {
            return Optional.empty();
        }
        History before = history;
        try (ServerSocket latch = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            latch.setSoTimeout(PATIENCE_MILLIS);
            String id = insertLatch(deed, latch.getLocalPort());
            page.session().show(history.now());
            boolean calls = comesToItsCall(id);
            if (calls && !breakOff(deed.kind(), latch)) {
                page.settle();
                return Optional.of("row " + id + " has not called, it is " + page.row(id));
            }
            page.settle();
            Set<String> broken = calls ? Set.of(id) : Set.of();
            boolean stops = deed.kind() == Deed.Kind.STOP;
            Optional<String> wrong = stops ? wrong(broken, Set.of()) : wrong(Set.of(), broken);
            history = before;
            page.run(history.now());
            return wrong.or(() -> wrong(Set.of(), Set.of()));
        }
    }

    private String insertLatch(Deed deed, int port) {
        Small.Text text =
                Small.Text.of(List.of(Pieces.show(Pieces.append("xs", Phrases.number(1))), Pieces.latch(port)));
        reading.language().put(text.java(), text);
        Row row = Pages.row("5-l" + Long.toUnsignedString(deed.seed(), 36), text.java());
        history = history.edit(history.now().insert(belowTheList(history.now().rows(), deed.at()), row));
        return row.id();
    }

    private static int belowTheList(List<Row> rows, int at) {
        return IntStream.range(0, rows.size())
                        .filter(i -> rows.get(i).text().startsWith("List<Integer> xs = new"))
                        .findFirst()
                        .orElse(at % rows.size())
                + 1;
    }

    /** Whether the row runs, and nothing before its call ends it. */
    private boolean comesToItsCall(String id) {
        return FakePage.fresh(reading, history.now(), Set.of(), Set.of()).stream()
                .anyMatch(outcome -> outcome.id().equals(id) && outcome.state() == State.STOPPED);
    }

    /** Whether the row has called, so that it could be broken off. */
    private boolean breakOff(Deed.Kind kind, ServerSocket latch) throws IOException {
        try (Socket called = latch.accept()) {
            long pid = new DataInputStream(called.getInputStream()).readLong();
            if (kind == Deed.Kind.STOP) {
                page.session().stop();
            } else {
                ProcessHandle.of(pid).ifPresent(ProcessHandle::destroyForcibly);
            }
            return true;
        } catch (SocketTimeoutException e) {
            return false;
        }
    }

    private Optional<String> wrong(Set<String> stopping, Set<String> dying) {
        List<Outcome> fresh = FakePage.fresh(reading, history.now(), stopping, dying);
        return Difference.between(Difference.withoutJavasWords(page.outcomes()), Difference.withoutJavasWords(fresh));
    }
}
