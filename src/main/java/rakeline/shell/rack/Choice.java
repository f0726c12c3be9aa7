package rakeline.shell.rack;

import java.util.List;
import javax.swing.JComboBox;

/** Something to choose, in words. */
record Choice<T>(String words, T value) {
    /** Offers these in place of what a box offered; what was chosen stays so, where it still is among them. */
    static <T> void fill(JComboBox<Choice<T>> box, List<Choice<T>> all) {
        String before = String.valueOf(box.getSelectedItem());
        box.removeAllItems();
        all.forEach(box::addItem);
        all.stream().filter(choice -> choice.words().equals(before)).findFirst().ifPresent(box::setSelectedItem);
    }

    @Override
    public String toString() {
        return words;
    }
}
