package rakeline.handout;

import static org.assertj.core.api.Assertions.assertThat;

import com.openhtmltopdf.bidi.BidiSplitter;
import org.junit.jupiter.api.Test;

class RightToLeftTest {
    @Test
    void runsComeFromLeftToRight() {
        RightToLeft order = new RightToLeft();
        order.setParagraph("שלום abc", BidiSplitter.RTL);
        assertThat(order.getVisualRun(0).getStart()).isEqualTo(5);
        assertThat(order.getVisualRun(1).getDirection()).isEqualTo(BidiSplitter.RTL);
    }

    @Test
    void lettersAreTurnedRoundAndBracketsFaceTheOtherWay() {
        assertThat(new RightToLeft().reorderRTLTextToLTR("(שלום)")).isEqualTo("(םולש)");
    }

    @Test
    void aParagraphRunsAsItsFirstLetterDoes() {
        assertThat(new RightToLeft().getBaseDirection("שלום abc")).isEqualTo(BidiSplitter.RTL);
    }

    @Test
    void aNumberAmongWordsThatRunLeftwardKeepsItsDigits() {
        assertThat(new RightToLeft().reorderRTLTextToLTR("שלום 12.5 עולם")).isEqualTo("םלוע 12.5 םולש");
    }

    @Test
    void wordsWithANumberAreOneRunInALineThatRunsRightward() {
        RightToLeft order = new RightToLeft();
        order.setParagraph("abc שלום 123 עולם def", BidiSplitter.LTR);
        assertThat(order.countTextRuns()).isEqualTo(3);
        assertThat(order.getVisualRun(1).getLength()).isEqualTo("שלום 123 עולם".length());
    }
}
