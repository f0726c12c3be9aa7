package rakeline.prelude;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rakeline.catalogue.Bundled;
import rakeline.catalogue.Roots;
import rakeline.geometry.Hands;
import rakeline.geometry.Setting;
import rakeline.handling.Response.Torque;
import rakeline.rider.SaddleTarget.Setback;
import rakeline.study.Vocabulary;

/**
 * What a text in quotes may name, by the name of the parameter that takes it: in the words of a row a parameter of that
 * name accepts these texts and no others.
 */
public enum NamedText {
    /** An input: what can be set, swept or solved for. */
    INPUT("inputKey"),
    /** A measure: what can be held. */
    MEASURE("measureKey"),
    /** A measure or an input: what can be tracked. */
    EITHER("key"),
    BIKE("bikeFile"),
    RIDER("riderFile"),
    PARTS("partsFile"),
    DYNAMICS("dynamicsFile"),
    HANDS("hands"),
    TORQUE("torque"),
    SETBACK("setback");

    private final String parameter;

    NamedText(String parameter) {
        this.parameter = parameter;
    }

    /** What a parameter of this name takes, or several of it with an s at the end; empty for a text that is free. */
    public static Optional<NamedText> of(String parameter) {
        return Stream.of(values())
                .filter(each -> parameter.equals(each.parameter) || parameter.equals(each.parameter + "s"))
                .findFirst();
    }

    /** Every text that is accepted, in the order in which to offer it; files are those found in these places. */
    public List<String> texts(Roots roots) {
        return switch (this) {
            case INPUT -> Setting.keys();
            case MEASURE ->
                Vocabulary.standard().measures().keySet().stream().sorted().toList();
            case EITHER -> Vocabulary.standard().keys();
            case BIKE -> roots.paths(Bundled.BIKES);
            case RIDER -> roots.paths(Bundled.RIDERS);
            case PARTS -> roots.paths(Bundled.PARTS);
            case DYNAMICS -> roots.paths(Bundled.DYNAMICS);
            case HANDS -> Stream.of(Hands.values()).map(Hands::word).toList();
            case SETBACK -> Stream.of(Setback.values()).map(Setback::word).toList();
            case TORQUE -> Stream.of(Torque.values()).map(Torque::word).toList();
        };
    }
}
