package rakeline.rider;

import java.util.Locale;

/** A published table of how a body's mass is spread over its segments. Fractions of body mass, one side of a limb. */
public enum BodyTable {
    /** Dempster in Winter, table 4.1: head and trunk are one piece, and so are forearm and hand. */
    DEMPSTER("Dempster in Winter, table 4.1"),
    /** de Leva 1996, men. */
    DE_LEVA_MEN("de Leva 1996, J. Biomech. 29:1223-1230, men"),
    /** de Leva 1996, women. */
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
