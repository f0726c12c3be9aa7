package rakeline.shell.rack;

import java.util.List;
import java.util.stream.IntStream;
import javax.swing.JComboBox;

/** Something to choose, in words. */
record Choice<T>(String words, T value) {
    /** Offers these, and shows which is chosen; the first where that is not among them. */
    static <T> void fill(JComboBox<Choice<T>> box, List<Choice<T>> all, T chosen) {
        List<Choice<T>> before =
                IntStream.range(0, box.getItemCount()).mapToObj(box::getItemAt).toList();
        if (!before.equals(all)) {
            box.removeAllItems();
            all.forEach(box::addItem);
        }
        int place = all.stream().map(Choice::value).toList().indexOf(chosen);
        box.setSelectedIndex(Math.max(0, place));
    }

    @Override
    public String toString() {
        return words;
    }
}
