package rakeline.geometry;

/** Sources of limits that several declarations share. */
final class Sources {
    static final String ISO_4210 =
            "ISO 4210-2:2015 Annex A (informative), read in a secondary copy; check the current text";
    static final String RACE_RULES =
            "UCI Part 1 arts 1.3.015-1.3.018, older edition, read in a secondary copy; check the current text";
    static final String INSERTION = "16 CFR 1512.15(b)";

    private Sources() {}
}
