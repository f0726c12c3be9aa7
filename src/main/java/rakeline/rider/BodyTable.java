package rakeline.rider;

import java.util.Locale;

/** A published table of how a body's mass is spread over its segments. */
public enum BodyTable {
    /** Head and trunk are one piece, measured from the hip, and so are forearm and hand. */
    DEMPSTER("Dempster in Winter, table 4.1"),
    /** The table's trunk is measured from its upper end: from the hip it is 1 − 0.4486. */
    DE_LEVA_MEN("de Leva 1996, J. Biomech. 29:1223-1230, men"),
    /** The table's trunk is measured from its upper end: from the hip it is 1 − 0.4151. */
    DE_LEVA_WOMEN("de Leva 1996, J. Biomech. 29:1223-1230, women");

    private final String source;

    BodyTable(String source) {
        this.source = source;
    }

    public String source() {
        return source;
    }

    /** As a rider file names it: {@code de-leva-men}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
