package rakeline.command;

import java.nio.file.Path;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import picocli.CommandLine.Option;
import rakeline.catalogue.Assumptions;
import rakeline.catalogue.Roots;
import rakeline.desk.Places;
import rakeline.desk.SafeFile;
import rakeline.handout.Imprint;
import rakeline.handout.Knowledge;
import rakeline.handout.Laid;
import rakeline.handout.Paper;
import rakeline.handout.Pdf;
import rakeline.handout.Sheet;
import rakeline.help.Glossary;
import rakeline.prelude.Pictures;
import rakeline.quantity.Refusal;
import rakeline.study.Vocabulary;

/** Where a command's sheet goes: HTML, PDF or both. All is laid out before the first file is written. */
final class Handed {
    private static final String STANDARD_OUTPUT = "-";

    @Option(names = "--html", paramLabel = "FILE", description = "Writes it as one HTML file; - is standard output.")
    private String html;

    @Option(names = "--pdf", paramLabel = "FILE", description = "Writes it as PDF.")
    private String pdf;

    @Option(names = "--paper", paramLabel = "SIZE", description = "A4 (default) or Letter: of the PDF.")
    private String paper = "A4";

    /**
     * Looks at what was asked for, before any work is done for it.
     *
     * @throws Refusal where it cannot be given
     */
    void check() {
        Paper.of(paper);
        if (STANDARD_OUTPUT.equals(pdf)) {
            throw new Refusal("--pdf is -; accepted is a file.");
        }
        Stream.of(html, pdf).filter(Objects::nonNull).forEach(Paths::of);
        if (html != null && html.equals(pdf)) {
            throw new Refusal("--html and --pdf are both " + html + "; accepted are two files.");
        }
    }

    /** Whether the HTML is what is printed. */
    boolean isPrinted() {
        return html == null ? pdf == null : html.equals(STANDARD_OUTPUT);
    }

    /** Writes the sheet; what is not asked for as a file is printed as HTML. */
    void write(Console console, Sheet sheet) {
        Laid laid = sheet.lay();
        Optional<Pdf> made = Optional.ofNullable(pdf).map(file -> laid.pdf(Paper.of(paper)));
        if (isPrinted()) {
            console.data().print(laid.xhtml());
        } else if (html != null) {
            SafeFile.onDisk().write(Paths.of(html), laid.html());
        }
        made.ifPresent(done -> {
            SafeFile.onDisk().write(Paths.of(pdf), done.bytes());
            if (!done.said().isEmpty()) {
                console.message(done.said());
            }
        });
    }

    static Imprint imprint(List<Imprint.Source> sources) {
        return new Imprint(Rakeline.Version.number(), ZonedDateTime.now(ZoneId.systemDefault()), sources);
    }

    /** What a page's words mean, its files looked for where its rows look. */
    static Knowledge knowledge(Vocabulary vocabulary, Optional<Path> folder) {
        Glossary glossary = Glossary.of(vocabulary.quantities(), vocabulary.constants());
        Roots roots =
                new Roots(Stream.concat(folder.stream(), Stream.of(Places.here().worksheets()))
                        .toList());
        return new Knowledge(glossary::find, path -> Assumptions.of(roots, path), Pictures::ofKey);
    }
}
