package rakeline.handout;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Values: the names of the code points in the Unicode character database, blocks FB50 and FE70 (M). */
class ArabicFormsTest {
    @Test
    void lettersTakeTheFormsThatTheirNeighboursAskFor() {
        assertThat(ArabicForms.joined("بيت")).isEqualTo("\uFE91\uFEF4\uFE96");
    }

    @Test
    void aLetterByItselfStandsAlone() {
        assertThat(ArabicForms.joined("ب ب")).isEqualTo("\uFE8F \uFE8F");
    }

    @Test
    void aLetterThatJoinsOnlyToTheOneBeforePartsTheWord() {
        assertThat(ArabicForms.joined("دار")).isEqualTo("\uFEA9\uFE8D\uFEAD");
    }

    @Test
    void lamAndAlefAreOne() {
        assertThat(ArabicForms.joined("لا بلا")).isEqualTo("\uFEFB \uFE91\uFEFC");
    }

    @Test
    void marksDoNotPartLetters() {
        assertThat(ArabicForms.joined("بَت")).isEqualTo("\uFE91\u064E\uFE96");
    }

    @Test
    void lettersOfPersianAndUrduJoinToo() {
        assertThat(ArabicForms.joined("پپ ٹ")).isEqualTo("\uFB58\uFB57 \uFB66");
    }

    @Test
    void otherScriptsStayAsTheyAre() {
        assertThat(ArabicForms.joined("abc שלום 你好 🚲 \u064E")).isEqualTo("abc שלום 你好 🚲 \u064E");
    }

    @Test
    void joinedLettersComeApartAgain() {
        String words = "ماذا يفعل لا پژ (offset)";
        assertThat(ArabicForms.apart(ArabicForms.joined(words))).isEqualTo(words);
    }
}
