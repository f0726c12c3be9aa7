package rakeline.shell.rack;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Consumer;
import javax.swing.SwingUtilities;
import rakeline.geometry.Bike;
import rakeline.study.Vocabulary;

/**
 * Computes what follows from the bikes of the rack on a thread of its own; what was asked last counts, and a bike that
 * did not change is not computed again.
 */
final class RackReader {
    private final ExecutorService thread = Executors.newSingleThreadExecutor(RackReader::named);
    private final AtomicLong asked = new AtomicLong();
    private Map<Question, RackReading> known = new HashMap<>();

    private record Question(Bike bike, RackSeat seat, List<String> keys) {}

    private static Thread named(Runnable work) {
        Thread thread = new Thread(work, "rack");
        thread.setDaemon(true);
        return thread;
    }

    /**
     * Reads every bike.
     *
     * @param done takes the readings by the ids of the rows, on the event thread, unless something was asked since
     */
    void read(List<RackBike> rows, RackChoices choices, Consumer<Map<String, RackReading>> done) {
        long number = asked.incrementAndGet();
        thread.execute(() -> {
            if (number == asked.get()) {
                Map<String, RackReading> readings = readings(rows, choices);
                SwingUtilities.invokeLater(() -> {
                    if (number == asked.get()) {
                        done.accept(readings);
                    }
                });
            }
        });
    }

    private Map<String, RackReading> readings(List<RackBike> rows, RackChoices choices) {
        Map<Question, RackReading> now = new HashMap<>();
        Map<String, RackReading> byId = new HashMap<>();
        for (RackBike row : rows) {
            row.bike()
                    .map(bike -> new Question(bike, choices.seat(), choices.measured()))
                    .ifPresent(question -> {
                        RackReading reading = known.containsKey(question) ? known.get(question) : answer(question);
                        now.put(question, reading);
                        byId.put(row.id(), reading);
                    });
        }
        known = now;
        return byId;
    }

    private static RackReading answer(Question question) {
        return RackReading.of(Vocabulary.standard(), question.bike(), question.seat(), question.keys());
    }

    void close() {
        thread.shutdown();
    }
}
