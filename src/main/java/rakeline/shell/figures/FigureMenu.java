package rakeline.shell.figures;

import java.awt.event.ActionEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import javax.swing.AbstractAction;
import javax.swing.JPopupMenu;
import javax.swing.KeyStroke;

/** What a figure offers where it stands: by the menu button of the mouse, the menu key, or Shift+F10. */
final class FigureMenu {
    private static final String OPEN = "open the figure's menu";

    private FigureMenu() {}

    static void install(FigureView figure) {
        figure.addMouseListener(new MouseAdapter() {
            @Override
            public void mousePressed(MouseEvent event) {
                offer(event);
            }

            @Override
            public void mouseReleased(MouseEvent event) {
                offer(event);
            }

            private void offer(MouseEvent event) {
                if (event.isPopupTrigger()) {
                    show(figure, event.getX(), event.getY());
                }
            }
        });
        figure.getInputMap().put(KeyStroke.getKeyStroke("shift F10"), OPEN);
        figure.getInputMap().put(KeyStroke.getKeyStroke("CONTEXT_MENU"), OPEN);
        figure.getActionMap().put(OPEN, new AbstractAction() {
            @Override
            public void actionPerformed(ActionEvent event) {
                show(figure, figure.getWidth() / 4, Math.min(figure.getHeight(), figure.getVisibleRect().y + 40));
            }
        });
    }

    private static void show(FigureView figure, int x, int y) {
        if (figure.figure().isPresent()) {
            menu(figure).show(figure, x, y);
        }
    }

    static JPopupMenu menu(FigureView figure) {
        FigureCopies copies = figure.copies();
        JPopupMenu menu = new JPopupMenu();
        menu.add("Copy as a picture").addActionListener(event -> copies.picture());
        menu.add("Copy as SVG").addActionListener(event -> copies.vectors());
        menu.add("Copy as a table").addActionListener(event -> copies.table());
        menu.add("Show as a table").addActionListener(event -> copies.show());
        menu.add("Save to a file…").addActionListener(event -> copies.write());
        if (figure.chart().isPresent()) {
            menu.add(HeldHand.WORDS).addActionListener(event -> HeldHand.ask(figure));
        }
        return menu;
    }
}
