package rakeline.shell.page;

import java.util.BitSet;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/** Java with its strings, characters and comments told from its code. */
final class JavaText {
    private static final Pattern APART = Pattern.compile(
            "//[^\\n]*|/\\*.*?(?:\\*/|$)|\"\"\".*?(?:\"\"\"|$)|\"(?:[^\"\\\\\\n]|\\\\.)*\"?|'(?:[^'\\\\\\n]|\\\\.)*'?",
            Pattern.DOTALL);

    private final String text;
    private final BitSet apart = new BitSet();

    private JavaText(String text) {
        this.text = text;
        APART.matcher(text).results().forEach(found -> apart.set(found.start(), found.end()));
    }

    static JavaText of(String text) {
        return new JavaText(text);
    }

    String text() {
        return text;
    }

    /** Where a pattern is found in the code. */
    List<MatchResult> all(Pattern pattern) {
        return pattern.matcher(text)
                .results()
                .filter(found -> !apart.get(found.end() - 1))
                .toList();
    }

    /** The place of the bracket that closes the one here; -1 where none does. */
    int closing(int open) {
        int depth = 0;
        for (int i = open; i < text.length(); i++) {
            if (!apart.get(i)) {
                char letter = text.charAt(i);
                depth += letter == '(' ? 1 : letter == ')' ? -1 : 0;
                if (depth == 0) {
                    return i;
                }
            }
        }
        return -1;
    }
}
