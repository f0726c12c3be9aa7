package rakeline.shell.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import javax.swing.text.BadLocationException;
import javax.swing.text.StyledDocument;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rakeline.figure.paint.Palette;
import rakeline.shell.look.Look;

class NoteWriterTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "# Trail|Trail",
                "*soft* and **loud**|soft and loud",
                "one\\ntwo|one two",
                "one\\n\\ntwo|one\\ntwo",
                "`toeRoomMm`|toeRoomMm",
                "- one\\n- two|•  one\\n•  two",
                "3. three\\n4. four|3.  three\\n4.  four",
                "[the map](https://example.org/a)|the map (https://example.org/a)",
                "![a wheel](https://example.org/w.png)|[a wheel]",
                "<script>x</script>|<script>x</script>",
                "```\\nint a;\\n```|int a;"
            })
    void commonMarkReadsAsText(String written, String read) throws BadLocationException {
        StyledDocument document = NoteWriter.write(written.replace("\\n", "\n"), new Look(Palette.LIGHT, 1));
        assertThat(document.getText(0, document.getLength())).isEqualTo(read.replace("\\n", "\n"));
    }
}
