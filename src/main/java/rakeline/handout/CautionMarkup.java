package rakeline.handout;

import java.util.ArrayList;
import java.util.List;
import rakeline.figure.CautionsSaid;
import rakeline.quantity.Caution;

/** Writes the cautions of a sheet: each in full once, and from then on its word, which leads to where it stands in full. */
final class CautionMarkup {
    private final CautionsSaid said = new CautionsSaid();
    private final List<String> inFull = new ArrayList<>();

    void write(List<Caution> cautions, Markup out) {
        write("p", cautions, out);
    }

    /**
     * @param element that each paragraph is
     */
    void write(String element, List<Caution> cautions, Markup out) {
        List<Caution> now = said.next(cautions);
        now.stream().filter(caution -> !caution.repeated()).forEach(caution -> inFull(element, caution, out));
        List<Caution> repeated = now.stream().filter(Caution::repeated).toList();
        if (!repeated.isEmpty()) {
            inWords(element, repeated, out);
        }
    }

    private void inFull(String element, Caution caution, Markup out) {
        inFull.add(caution.sentence());
        out.open(element, "class", "caution", "id", "caution" + inFull.size(), "dir", "auto");
        out.element("b", "Caution:").text(" " + caution.text()).close();
    }

    private void inWords(String element, List<Caution> cautions, Markup out) {
        out.open(element, "class", "caution", "dir", "auto").element("b", "Caution:");
        for (int i = 0; i < cautions.size(); i++) {
            Caution caution = cautions.get(i);
            out.text(i == 0 ? " " : ", ");
            out.element("a", caution.text(), "href", "#caution" + (inFull.indexOf(caution.sentence()) + 1));
        }
        out.close();
    }
}
