package rakeline.geometry.parts;

import static rakeline.geometry.parts.Field.needed;
import static rakeline.geometry.parts.Field.optional;

import java.util.List;
import java.util.stream.Stream;
import rakeline.geometry.Inputs;

/** Kinds of stock parts, in the order of the bike file's keys that they bring. */
public enum Category {
    BARS("bars"),
    COVERS("headsetCovers"),
    SPACERS("spacers"),
    STEMS("stems"),
    CRANKS("cranks"),
    FORKS("forks"),
    POSTS("posts"),
    TYRES("tyres");

    private final String word;

    Category(String word) {
        this.word = word;
    }

    /** As a parts file says it. */
    public String word() {
        return word;
    }

    /** The numbers that such a part gives. */
    public List<Field> fields() {
        return switch (this) {
            case BARS ->
                List.of(
                        needed("widthMm", "barWidthMm", Inputs.BAR_WIDTH),
                        optional("hoodForwardMm", "hoodForwardMm", Inputs.HOOD_FORWARD),
                        optional("hoodRiseMm", "hoodRiseMm", Inputs.HOOD_RISE),
                        optional("reachMm", "barReachMm", Inputs.BAR_REACH),
                        optional("dropMm", "barDropMm", Inputs.BAR_DROP),
                        optional("flareDeg", "barFlareDeg", Inputs.BAR_FLARE),
                        optional("leverAheadMm", "leverAheadMm", Inputs.LEVER_AHEAD),
                        optional("leverUpMm", "leverUpMm", Inputs.LEVER_UP));
            case COVERS -> List.of(needed("heightMm", "headsetCoverMm", Inputs.HEADSET_COVER));
            case SPACERS -> List.of(needed("heightsMm", "spacersMm", Inputs.SPACERS));
            case STEMS ->
                List.of(
                        needed("lengthMm", "stemLengthMm", Inputs.STEM_LENGTH),
                        needed("angleDeg", "stemAngleDeg", Inputs.STEM_ANGLE),
                        optional("clampHeightMm", "stemClampHeightMm", Inputs.STEM_CLAMP_HEIGHT));
            case CRANKS ->
                List.of(
                        needed("lengthMm", "crankLengthMm", Inputs.CRANK_LENGTH),
                        optional("stanceWidthMm", "stanceWidthMm", Inputs.STANCE_WIDTH),
                        optional("pedalStackMm", "pedalStackMm", Inputs.PEDAL_STACK));
            case FORKS ->
                List.of(
                        needed("offsetMm", "forkOffsetMm", Inputs.FORK_OFFSET),
                        optional("axleToCrownMm", "axleToCrownMm", Inputs.AXLE_TO_CROWN),
                        optional("steererLengthMm", "steererLengthMm", Inputs.STEERER_LENGTH),
                        optional("spacerLimitMm", "spacerLimitMm", Inputs.SPACER_LIMIT));
            case POSTS ->
                List.of(
                        needed("setbackMm", "postSetbackMm", Inputs.POST_SETBACK),
                        optional("lengthMm", "postLengthMm", Inputs.POST_LENGTH),
                        optional("minimumInsertionMm", "minimumInsertionMm", Inputs.POST_MINIMUM_INSERTION));
            case TYRES ->
                List.of(
                        needed("widthMm", "tyreMm", Inputs.FRONT_TYRE, Inputs.REAR_TYRE),
                        optional("mudguardGapMm", "mudguardGapMm", Inputs.MUDGUARD_GAP));
        };
    }

    /** Every number of every category, in order. */
    public static List<Field> allFields() {
        return Stream.of(values())
                .flatMap(category -> category.fields().stream())
                .toList();
    }
}
