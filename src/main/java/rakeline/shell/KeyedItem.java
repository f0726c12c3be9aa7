package rakeline.shell;

import com.formdev.flatlaf.ui.FlatMenuItemRenderer;
import com.formdev.flatlaf.ui.FlatMenuItemUI;
import javax.swing.Action;
import javax.swing.JMenuItem;
import javax.swing.KeyStroke;

/** An item of a menu whose key reads as in the list of keys. */
final class KeyedItem extends JMenuItem {
    KeyedItem(Action action) {
        super(action);
    }

    @Override
    public void updateUI() {
        setUI(new Ui());
    }

    private static final class Ui extends FlatMenuItemUI {
        @Override
        protected FlatMenuItemRenderer createRenderer() {
            return new FlatMenuItemRenderer(menuItem, checkIcon, arrowIcon, acceleratorFont, acceleratorDelimiter) {
                @Override
                protected String getTextForAccelerator(KeyStroke key) {
                    return Keys.words(key);
                }
            };
        }
    }
}
