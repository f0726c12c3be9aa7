package rakeline.handout;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import rakeline.quantity.Caution;

/**
 * What a handout says, before it is laid out.
 *
 * @param about one sentence under the title, or empty
 * @param imprint the last lines: date, version, where it came from
 * @param form how closely it is set
 */
public record Sheet(String title, String about, List<Block> blocks, List<String> imprint, Form form) {
    /** Said on every sheet for others. */
    public static final List<Caution> STANDING_CAUTIONS = List.of(
            new Caution(
                    "standards and rules",
                    "A figure about geometry is no safety certificate. Standards, race rules and road law differ by place"
                            + " and edition: check the current local text."),
            new Caution(
                    "who does the work",
                    "Work on forks, steerers, headsets, carbon parts and brakes belongs to a qualified mechanic and the"
                            + " part maker's instructions; the maker's marks and limits win over any number here. Pain and"
                            + " injury belong to a clinician."));

    /** How closely a sheet is set. */
    public enum Form {
        /** As many pages as it takes. */
        PAGES,
        /** Close, so that all of it stands on one page. */
        ONE_PAGE
    }

    public Sheet {
        blocks = List.copyOf(blocks);
        imprint = List.copyOf(imprint);
    }

    /** Several sheets on one, each under its title. */
    public static Sheet joined(List<Sheet> sheets) {
        if (sheets.size() == 1) {
            return sheets.get(0);
        }
        List<Block> blocks = new ArrayList<>();
        for (Sheet sheet : sheets) {
            blocks.add(new Block.Heading(2, sheet.title()));
            blocks.add(new Block.Words(Block.Tone.QUIET, sheet.about()));
            sheet.blocks().forEach(block -> blocks.add(block.lower()));
        }
        String title = sheets.stream().map(Sheet::title).collect(Collectors.joining("; "));
        List<String> imprint = sheets.stream()
                .flatMap(sheet -> sheet.imprint().stream())
                .distinct()
                .toList();
        return new Sheet(title, "", blocks, imprint, Form.PAGES);
    }

    /** The sheet as one XHTML text. */
    public Laid lay() {
        return Layout.of(this);
    }
}
