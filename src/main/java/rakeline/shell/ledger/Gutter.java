package rakeline.shell.ledger;

import java.awt.Dimension;
import javax.swing.JLabel;
import javax.swing.SwingConstants;
import rakeline.engine.Outcome;
import rakeline.shell.look.Look;
import rakeline.shell.look.Pile;
import rakeline.shell.look.Words;

/** The margin of a row: its name, and under it its state in words. */
final class Gutter extends Pile {
    private final JLabel name;
    private final JLabel state;

    Gutter(Look look) {
        super(look.px(2));
        name = Words.line(" ", look.strong(), look.ink());
        state = Words.line(" ", look.small(), look.soft());
        name.setHorizontalAlignment(SwingConstants.RIGHT);
        state.setHorizontalAlignment(SwingConstants.RIGHT);
        add(name);
        add(state);
    }

    void show(Outcome standing) {
        name.setText(standing.name());
        name.setVisible(!standing.name().isEmpty());
        name.setToolTipText(standing.name().isEmpty() ? null : standing.name());
        state.setText(standing.state().words());
    }

    /** A note has neither name nor state. */
    void showNothing() {
        name.setVisible(false);
        state.setVisible(false);
    }

    String words() {
        return (name.getText() + " " + state.getText()).strip();
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(
                Math.max(name.getPreferredSize().width, state.getPreferredSize().width), heightFor(getWidth()));
    }
}
