package rakeline.engine;

import java.util.List;

/**
 * What a page's source tells without running anything.
 *
 * @param findings rows that cannot run as they stand
 * @param controls the dials and pickers that rows declare, in page order
 */
public record Inspection(List<Finding> findings, List<SnippetSource.Declared> controls) {
    /** One sentence about a row, with the Java message under it where there is one. */
    public record Finding(String rowId, int rowNumber, String rowName, String sentence) {}

    public Inspection {
        findings = List.copyOf(findings);
        controls = List.copyOf(controls);
    }
}
