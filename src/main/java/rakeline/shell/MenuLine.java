package rakeline.shell;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.swing.JMenu;
import javax.swing.JMenuBar;
import javax.swing.JMenuItem;
import javax.swing.event.MenuEvent;
import javax.swing.event.MenuListener;
import rakeline.shell.look.Look;

/** The menus, made from what can be done; an item that cannot be done now is grey. */
final class MenuLine {
    private MenuLine() {}

    static JMenuBar of(List<Deed> deeds, Look look) {
        JMenuBar bar = new JMenuBar();
        bar.setBorder(look.line(0, 0, 1, 0));
        Map<String, JMenu> menus = new LinkedHashMap<>();
        for (Deed deed : deeds) {
            JMenu menu = menus.computeIfAbsent(deed.menu(), words -> {
                JMenu added = new JMenu(words);
                added.setMnemonic(words.charAt(0));
                return bar.add(added);
            });
            add(menu, deed);
        }
        return bar;
    }

    private static void add(JMenu menu, Deed deed) {
        JMenuItem item = menu.add(new KeyedItem(deed.action()));
        menu.addMenuListener(new MenuListener() {
            @Override
            public void menuSelected(MenuEvent event) {
                item.setEnabled(deed.possible().getAsBoolean());
            }

            @Override
            public void menuDeselected(MenuEvent event) {
                item.setEnabled(true);
            }

            @Override
            public void menuCanceled(MenuEvent event) {
                item.setEnabled(true);
            }
        });
    }
}
