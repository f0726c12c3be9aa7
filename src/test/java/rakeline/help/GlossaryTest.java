package rakeline.help;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import rakeline.handling.Ride;
import rakeline.study.Fixture;
import rakeline.study.Vocabulary;

/** Help and completion read the declarations. */
class GlossaryTest {
    private static final Glossary GLOSSARY = of(Vocabulary.standard());

    private static Glossary of(Vocabulary vocabulary) {
        return Glossary.of(vocabulary.keys().stream().map(vocabulary::quantity).toList(), vocabulary.constants());
    }

    @Test
    void aConstantIsFoundLikeItsKey() {
        assertThat(GLOSSARY.find("TRAIL")).isPresent().isEqualTo(GLOSSARY.find("trailMm"));
    }

    @Test
    void anotherWordHasNoEntry() {
        assertThat(GLOSSARY.find("bike")).isEmpty();
    }

    @Test
    void theStartOfAWordIsCompletedWhateverItsCase() {
        assertThat(GLOSSARY.beginning("frame.head")).containsOnlyKeys("frame.headAngleDeg", "frame.headTubeMm");
        assertThat(GLOSSARY.beginning("toe_r")).containsKeys("TOE_ROOM", "TOE_RADIUS");
    }

    @Test
    void anEntryGivesRangeUncertaintyAndConstant() {
        assertThat(GLOSSARY.entry(GLOSSARY.find("HEAD_ANGLE").orElseThrow()))
                .contains("Accepted: 50..85°", "Usual standard uncertainty: 0.2°", "In a snippet: HEAD_ANGLE");
    }

    @Test
    void anEntryGivesLimitsWithTheirSourceAndTheCaution() {
        assertThat(GLOSSARY.entry(GLOSSARY.find("pedalToTyreMm").orElseThrow()))
                .contains("Limit: 89 mm, without foot retention (16 CFR 1512.17(d))")
                .anyMatch(line -> line.startsWith("Caution: Toe contact can throw a rider"));
    }

    @Test
    void oneMoreDeclarationIsCompletedAndExplained() {
        Glossary wider = of(Vocabulary.standard().and(Fixture.class, Ride::geometry));
        assertThat(wider.beginning("stackO")).containsOnlyKeys(Fixture.KEY);
        assertThat(wider.beginning("STACK_O")).containsOnlyKeys("STACK_OVER_REACH");
        assertThat(wider.entry(wider.find("STACK_OVER_REACH").orElseThrow())).contains("Stack in per cent of reach.");
    }
}
