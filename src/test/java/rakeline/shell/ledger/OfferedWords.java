package rakeline.shell.ledger;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;
import rakeline.catalogue.Roots;
import rakeline.engine.jshell.Sessions;
import rakeline.study.Vocabulary;
import rakeline.worksheet.Row;
import rakeline.worksheet.Worksheet;

/** Prints what the editor offers and explains, for the program that is on the class path. */
public final class OfferedWords {
    private OfferedWords() {}

    /**
     * Prints each word, what stands behind it, and its explanation, a line each.
     *
     * @param args the code in front of the caret; none for the words of the help window
     */
    public static void main(String[] args) {
        PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
        try (CodeHelp help = new CodeHelp(Vocabulary.standard(), Sessions::suggestions, folder -> Roots.bundled())) {
            if (args.length == 0) {
                help.preludeWords().forEach((word, lines) -> lines.forEach(line -> out.println(word + ": " + line)));
            } else {
                print(out, help, args[0]);
            }
        }
    }

    private static void print(PrintStream out, CodeHelp help, String code) {
        Worksheet page = Worksheet.empty("").insert(0, Row.Snippet.of("r1", code));
        help.offered(page, Optional.<Path>empty(), "r1", code.length()).words().forEach(word -> {
            out.println(word.text() + " | " + word.brief());
            word.entry().forEach(line -> out.println(word.text() + ": " + line));
        });
    }
}
