package rakeline.prelude;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.Parameter;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import rakeline.catalogue.Roots;

class NamedTextTest {
    /** Texts that a row may word as it likes. */
    private static final Set<String> FREE = Set.of("label", "unit", "newName", "riderName", "group");

    @ParameterizedTest
    @EnumSource(NamedText.class)
    void everyKindHasTextsToOffer(NamedText kind) {
        assertThat(kind.texts(Roots.bundled())).isNotEmpty().doesNotHaveDuplicates();
    }

    @Test
    void severalOfAKindAreNamedByTheirPlural() {
        assertThat(NamedText.of("keys")).contains(NamedText.EITHER);
    }

    /** So that what is offered inside quotes is complete, however many words are added. */
    @Test
    void everyTextThatAWordOfTheRowsTakesIsOfAKindOrFree() {
        List<Parameter> texts = RowWords.all().stream()
                .flatMap(method -> Arrays.stream(method.getParameters()))
                .filter(each -> each.getType() == String.class || each.getType() == String[].class)
                .filter(each -> !FREE.contains(each.getName()))
                .toList();
        assertThat(texts)
                .hasSizeGreaterThan(30)
                .allSatisfy(each -> assertThat(NamedText.of(each.getName()))
                        .as("%s of %s", each, each.getDeclaringExecutable())
                        .isPresent());
    }
}
