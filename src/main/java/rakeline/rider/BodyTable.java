package rakeline.rider;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** A published table of how a body's mass is spread over its segments, called by its population and year. */
public enum BodyTable {
    /** Head and trunk are one piece, measured from the hip, and so are forearm and hand. */
    CADAVERS_1955("dempster", "Dempster in Winter, table 4.1", "radii of gyration"),
    /** The table's trunk is measured from its upper end: from the hip it is 1 − 0.4486. */
    MEN_1996(
            "de-leva-men",
            "de Leva 1996, J. Biomech. 29:1223-1230, men",
            "radii of gyration, and centres of head, hand and foot"),
    /** The table's trunk is measured from its upper end: from the hip it is 1 − 0.4151. */
    WOMEN_1996(
            "de-leva-women",
            "de Leva 1996, J. Biomech. 29:1223-1230, women",
            "radii of gyration, and centres of head, hand and foot");

    private final String former;
    private final String published;
    private final String remembered;

    BodyTable(String former, String published, String remembered) {
        this.former = former;
        this.published = published;
        this.remembered = remembered;
    }

    /** The table that a rider file names, by its word or, in older files, by the table's author. */
    public static Optional<BodyTable> of(String word) {
        return Stream.of(values())
                .filter(table -> table.word().equals(word) || table.former.equals(word))
                .findFirst();
    }

    /** Where its numbers come from, and which of them nobody has checked. */
    public String source() {
        return published + "; " + remembered + " from memory, not verified";
    }

    /** As a rider file names it, by population and year: {@code men-1996}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
