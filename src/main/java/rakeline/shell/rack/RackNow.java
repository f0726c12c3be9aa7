package rakeline.shell.rack;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import rakeline.shell.page.Background;

/**
 * What stands on the rack now, what follows from it, and who looks at it: whenever it becomes another, all that follows is
 * computed anew and the views show it. To be used on the event thread.
 */
final class RackNow {
    private final RackReader reader = new RackReader();
    private final Background study = new Background("rack study");
    private final List<RackDesk.View> views = new ArrayList<>();
    private RackModel model = RackModel.empty();
    private RackSeat seat = RackSeat.EMPTY;
    private Map<String, RackReading> readings = Map.of();

    RackModel model() {
        return model;
    }

    RackSeat seat() {
        return seat;
    }

    RackReading reading(RackRow row) {
        return readings.getOrDefault(row.id(), RackReading.NONE);
    }

    void watch(RackDesk.View view) {
        views.add(view);
        view.showRack();
    }

    /** Forgets all views, before others take their place. */
    void unwatchAll() {
        views.clear();
    }

    void become(RackModel next) {
        model = next;
        told();
    }

    /** Another bike in the place of one. */
    void put(String id, RackRow row) {
        become(model.with(id, row));
    }

    void seat(RackSeat other) {
        seat = other;
        told();
    }

    private void told() {
        reader.read(model, seat, now -> {
            readings = new HashMap<>(now);
            show();
        });
        show();
    }

    private void show() {
        List.copyOf(views).forEach(RackDesk.View::showRack);
    }

    Background study() {
        return study;
    }

    /** Has the views list again what can be chosen. */
    void listAgain() {
        List.copyOf(views).forEach(RackDesk.View::listAgain);
    }

    /** Ends what computes. */
    void close() {
        reader.close();
        study.close();
    }
}
