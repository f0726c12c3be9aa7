package rakeline.shell;

import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.awt.MouseInfo;
import java.awt.Point;
import java.awt.PointerInfo;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javax.swing.JOptionPane;
import javax.swing.SwingUtilities;
import rakeline.shell.guide.Guide;
import rakeline.shell.ledger.CodeHelp;
import rakeline.shell.look.Look;
import rakeline.shell.look.Pointed;

/** What the program says of itself, with its keys. */
final class HelpDeeds {
    private static final String MENU = "Help";

    private final CodeHelp help;
    private final Supplier<Face> face;
    private final Supplier<Look> look;
    private final Supplier<List<Deed>> deeds;

    /**
     * @param deeds all that can be done, for the list of keys
     */
    HelpDeeds(CodeHelp help, Supplier<Face> face, Supplier<Look> look, Supplier<List<Deed>> deeds) {
        this.help = help;
        this.face = face;
        this.look = look;
        this.deeds = deeds;
    }

    /**
     * @param openKeys opens the page of every input and measure
     * @param firstSteps opens the worksheet that shows the window
     */
    List<Deed> all(Runnable openKeys, Runnable firstSteps) {
        return List.of(
                Deed.of(MENU, "Keys", "F1", () -> KeyList.show(face.get(), deeds.get(), look.get())),
                Deed.of(MENU, "Help on the selected part", "shift F1", this::onFocus),
                Deed.of(MENU, "Help on what is under the pointer", "ctrl F1", this::atPointer),
                Deed.of(MENU, "Inputs and measures", "ctrl shift F2", openKeys),
                Deed.of(MENU, "First steps", "ctrl shift F1", firstSteps),
                Deed.of(MENU, "About Rakeline", "alt F1", this::about));
    }

    private void onFocus() {
        Component focused =
                KeyboardFocusManager.getCurrentKeyboardFocusManager().getPermanentFocusOwner();
        String topic = Pointed.of(focused).orElse("start");
        Guide guide = openGuide(topic);
        if (!guide.knows(topic)) {
            face.get().ledger().explain(lines -> guide.tell(topic, lines));
        }
    }

    private void atPointer() {
        Point place = Optional.ofNullable(MouseInfo.getPointerInfo())
                .map(PointerInfo::getLocation)
                .orElse(new Point());
        SwingUtilities.convertPointFromScreen(place, face.get());
        openGuide(Pointed.of(Pointed.deepest(face.get(), place)).orElse("start"));
    }

    private Guide openGuide(String topic) {
        return Guide.open(face.get(), look.get(), help, topic);
    }

    /** Says which version this is, and what it runs on. */
    void about() {
        JOptionPane.showMessageDialog(face.get(), Mishap.system(), "About Rakeline", JOptionPane.PLAIN_MESSAGE);
    }
}
