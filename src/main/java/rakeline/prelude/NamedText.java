package rakeline.prelude;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import rakeline.catalogue.Bundled;
import rakeline.catalogue.Roots;
import rakeline.geometry.Hands;
import rakeline.geometry.Setting;
import rakeline.handling.Response.Torque;
import rakeline.study.Vocabulary;

/**
 * What a text in quotes may name, by the name of the parameter that takes it: in the words of a row a parameter of that
 * name accepts these texts and no others.
 */
public enum NamedText {
    /** An input: what can be set, swept or solved for. */
    INPUT("inputKey", roots -> Setting.keys()),
    /** A measure: what can be held. */
    MEASURE(
            "measureKey",
            roots -> Vocabulary.standard().measures().keySet().stream().sorted().toList()),
    /** A measure or an input: what can be tracked. */
    EITHER("key", roots -> Vocabulary.standard().keys()),
    BIKE("bikeFile", roots -> roots.paths(Bundled.BIKES)),
    RIDER("riderFile", roots -> roots.paths(Bundled.RIDERS)),
    PARTS("partsFile", roots -> roots.paths(Bundled.PARTS)),
    DYNAMICS("dynamicsFile", roots -> roots.paths(Bundled.DYNAMICS)),
    HANDS("hands", roots -> Arrays.stream(Hands.values()).map(Hands::word).toList()),
    TORQUE("torque", roots -> Arrays.stream(Torque.values()).map(Torque::word).toList());

    private final String parameter;
    private final Function<Roots, List<String>> texts;

    NamedText(String parameter, Function<Roots, List<String>> texts) {
        this.parameter = parameter;
        this.texts = texts;
    }

    /** What a parameter of this name takes, or several of it with an s at the end; empty for a text that is free. */
    public static Optional<NamedText> of(String parameter) {
        return Stream.of(values())
                .filter(each -> parameter.equals(each.parameter) || parameter.equals(each.parameter + "s"))
                .findFirst();
    }

    /** Every text that is accepted, in the order in which to offer it; files are those found in these places. */
    public List<String> texts(Roots roots) {
        return texts.apply(roots);
    }
}
