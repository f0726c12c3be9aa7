package rakeline.shell.rack;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import rakeline.worksheet.Row;
import rakeline.worksheet.Worksheet;

class RackEffectTest {
    private final Worksheet page = new RackEffect.Renames("a.bike.json", "mine.bike.json")
            .page(Worksheet.empty("A page")
                    .withRack(List.of("a.bike.json", "b.bike.json"))
                    .withRows(List.of(
                            new Row.Note("n", "see \"a.bike.json\""),
                            Row.Snippet.of("r", "Bike a = bike(\"a.bike.json\"), aa = bike(\"aa.bike.json\");")))
                    .withPick("p", "a.bike.json"));

    @Test
    void theRackNamesTheOtherFileInItsPlace() {
        assertThat(page.rack()).containsExactly("mine.bike.json", "b.bike.json");
    }

    @Test
    void pickersAndSnippetsReadTheOtherFile() {
        assertThat(page.picks()).containsEntry("p", "mine.bike.json");
        assertThat(page.row("r").orElseThrow().text())
                .isEqualTo("Bike a = bike(\"mine.bike.json\"), aa = bike(\"aa.bike.json\");");
    }

    @Test
    void notesStayAsTheyAre() {
        assertThat(page.row("n").orElseThrow().text()).isEqualTo("see \"a.bike.json\"");
    }
}
