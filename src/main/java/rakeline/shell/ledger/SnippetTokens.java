package rakeline.shell.ledger;

import java.util.Set;
import org.fife.ui.rsyntaxtextarea.TokenTypes;
import org.fife.ui.rsyntaxtextarea.modes.JavaTokenMaker;

/** Java as it stands in rows: words that are reserved in the declaration of a module alone are names here. */
final class SnippetTokens extends JavaTokenMaker {
    /** Source: The Java Language Specification, Java SE 17, 3.9, contextual keywords of module declarations. */
    private static final Set<String> OF_MODULES =
            Set.of("exports", "module", "open", "opens", "provides", "requires", "to", "transitive", "uses", "with");

    @Override
    public void addToken(char[] text, int from, int to, int type, int at, boolean link) {
        boolean name = type == TokenTypes.RESERVED_WORD && OF_MODULES.contains(new String(text, from, to - from + 1));
        super.addToken(text, from, to, name ? TokenTypes.IDENTIFIER : type, at, link);
    }
}
