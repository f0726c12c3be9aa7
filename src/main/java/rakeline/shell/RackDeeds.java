package rakeline.shell;

import java.util.List;
import java.util.function.Consumer;
import rakeline.shell.rack.RackHand;

/** What can be done on the rack, with its keys. */
final class RackDeeds {
    private static final String MENU = "Rack";

    private final Runnable turn;
    private final Consumer<Consumer<RackHand>> rack;

    /**
     * @param turn opens the rack or closes it
     * @param rack does something on it, and opens it for that
     */
    RackDeeds(Runnable turn, Consumer<Consumer<RackHand>> rack) {
        this.turn = turn;
        this.rack = rack;
    }

    List<Deed> all() {
        return List.of(
                Deed.of(MENU, "Rack", "ctrl F7", turn),
                on("Add bikes that come with the program…", "ctrl shift A", RackHand::addBundled),
                on("Add bike files…", "ctrl shift O", RackHand::addFiles),
                on("New bike", "ctrl shift B", RackHand::begin),
                on("Duplicate the bike", "ctrl shift D", RackHand::duplicate),
                on("Rename the bike…", "shift F2", RackHand::rename),
                on("Remove from the rack", "ctrl shift BACK_SPACE", RackHand::remove),
                on("Import a chart…", "ctrl shift I", RackHand::importChart),
                on("Export…", "ctrl shift E", RackHand::export),
                on("Columns…", "ctrl shift L", RackHand::chooseColumns),
                on("Compare the selected bikes", "ctrl shift K", RackHand::compare),
                on("Match to stock parts", "ctrl shift M", RackHand::match));
    }

    private Deed on(String words, String key, Consumer<RackHand> work) {
        return Deed.of(MENU, words, key, () -> rack.accept(work));
    }
}
