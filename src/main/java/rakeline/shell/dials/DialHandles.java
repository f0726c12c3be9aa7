package rakeline.shell.dials;

import java.util.Optional;
import rakeline.engine.Control;
import rakeline.shell.figures.Handles;
import rakeline.shell.look.Numerals;
import rakeline.shell.page.Bench;

/** The dials of the page on the bench, moved by a hand on a figure. */
public final class DialHandles implements Handles {
    private final Bench bench;

    public DialHandles(Bench bench) {
        this.bench = bench;
    }

    private Optional<Control.Dial> dial(String key) {
        return bench.model().controls().stream()
                .filter(Control.Dial.class::isInstance)
                .map(Control.Dial.class::cast)
                .filter(dial -> dial.key().equals(key))
                .findFirst();
    }

    @Override
    public Optional<Bound> bound(String key) {
        return dial(key).map(dial -> new Bound(dial.label(), dial.value()));
    }

    @Override
    public void move(String key, double value) {
        dial(key).ifPresent(dial -> {
            Scale scale = Scale.of(dial);
            double to = scale.at(scale.nearest(Math.max(dial.min(), Math.min(dial.max(), value))));
            if (to != dial.value()) {
                String shown = Numerals.withUnit(Numerals.show(to, dial.decimals()), dial.unit());
                bench.dial(dial.name(), to, dial.label() + " " + shown);
            }
        });
    }

    @Override
    public void rest() {
        bench.pause();
    }
}
