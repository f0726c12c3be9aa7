package rakeline.shell.dials;

import com.formdev.flatlaf.ui.FlatSliderUI;
import java.awt.Dimension;
import java.awt.Graphics;
import java.util.function.DoubleConsumer;
import javax.swing.JSlider;
import rakeline.engine.Control;
import rakeline.shell.look.Look;

/**
 * The slider of a dial: it stands only at min + n·step and at both ends; the bike's own value is a tick. A value between
 * two places stays as it is until the slider is moved.
 */
final class DialSlider extends JSlider {
    private final transient Look look;
    private transient Scale scale;
    private double own = Double.NaN;
    private boolean showing;
    private int place;

    DialSlider(Look look, DoubleConsumer moved, Runnable letGo) {
        super(0, 1);
        this.look = look;
        setOpaque(false);
        setUI(new OwnTick());
        addChangeListener(event -> {
            if (!showing) {
                if (getValue() != place) {
                    place = getValue();
                    moved.accept(scale.at(place));
                }
                if (!getValueIsAdjusting()) {
                    letGo.run();
                }
            }
        });
    }

    /** Stands where the dial stands, without saying that it moved. */
    void show(Control.Dial dial) {
        showing = true;
        scale = Scale.of(dial);
        own = dial.own();
        setMaximum(scale.last());
        setExtent(0);
        if (!getValueIsAdjusting()) {
            place = scale.nearest(dial.value());
            setValue(place);
        }
        showing = false;
        repaint();
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(look.px(120), Math.max(look.px(20), super.getPreferredSize().height));
    }

    @Override
    public Dimension getMinimumSize() {
        return new Dimension(look.px(40), getPreferredSize().height);
    }

    /** Adds the tick of the bike's own value to the track. */
    private final class OwnTick extends FlatSliderUI {
        @Override
        public void paintTrack(Graphics g) {
            if (!Double.isNaN(own) && scale != null) {
                g.setColor(look.ink());
                int x = trackRect.x + (int) Math.round(scale.fraction(own) * trackRect.width);
                int reach = look.px(8);
                g.fillRect(x, trackRect.y + trackRect.height / 2 - reach, look.px(1.5), 2 * reach);
            }
            super.paintTrack(g);
        }
    }
}
