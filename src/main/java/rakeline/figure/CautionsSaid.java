package rakeline.figure;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import rakeline.quantity.Caution;

/**
 * The cautions of one page in the order in which it is read: each in full where the first number stands that needs it,
 * and in a word from then on.
 */
public final class CautionsSaid {
    private final Set<Caution> said = new LinkedHashSet<>();

    /** How these stand at the next place of the page. */
    public List<Caution> next(List<Caution> cautions) {
        return cautions.stream().map(this::next).toList();
    }

    /** How the next figure of the page says its own. */
    public Figure next(Figure figure) {
        return figure.cautions().isEmpty() ? figure : figure.withCautions(next(figure.cautions()));
    }

    private Caution next(Caution caution) {
        Caution whole = new Caution(caution.word(), caution.sentence());
        return said.add(whole) ? whole : whole.again();
    }

    /** What stands beneath numbers: the cautions said in full, each a paragraph, then those in a word, together. */
    public static List<String> paragraphs(List<Caution> cautions) {
        List<String> paragraphs = new java.util.ArrayList<>(cautions.stream()
                .filter(caution -> !caution.repeated())
                .map(Caution::text)
                .toList());
        String words = String.join(
                ", ",
                cautions.stream().filter(Caution::repeated).map(Caution::text).toList());
        if (!words.isEmpty()) {
            paragraphs.add(words);
        }
        return paragraphs;
    }
}
