package rakeline.shell.dials;

import java.util.Optional;
import rakeline.engine.Control;
import rakeline.figure.paint.Grip;
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
    public Optional<Bound> bound(Grip grip) {
        return dial(grip.key())
                .map(dial -> new Bound(
                        "the dial “" + dial.label() + "”", dial.value(), dial.step(), shown(dial, dial.value())));
    }

    @Override
    public String whyNot(Grip grip) {
        return "It cannot be dragged: no dial of this page is bound to " + grip.key();
    }

    private static String shown(Control.Dial dial, double value) {
        return Numerals.withUnit(Numerals.show(value, dial.decimals()), dial.unit());
    }

    @Override
    public void move(Grip grip, double value) {
        dial(grip.key()).ifPresent(dial -> {
            Scale scale = Scale.of(dial);
            double to = scale.at(scale.nearest(Math.max(dial.min(), Math.min(dial.max(), value))));
            if (to != dial.value()) {
                String end = to == dial.min() || to == dial.max() ? ", an end of its range" : "";
                bench.dial(dial.name(), to, dial.label() + " " + shown(dial, to) + end);
            }
        });
    }

    @Override
    public void rest() {
        bench.pause();
    }
}
