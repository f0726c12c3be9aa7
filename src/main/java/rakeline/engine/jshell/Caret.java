package rakeline.engine.jshell;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/**
 * Where a piece of Java ends: in the code itself, in a text whose quotes are still open, or in a comment.
 *
 * @param start where what is open begins: a text behind its quotes, a comment with its marks; in code the end
 * @param argument how many commas stand before that place in the innermost bracket that is open
 */
record Caret(Place place, int start, int argument) {
    enum Place {
        CODE,
        TEXT,
        COMMENT
    }

    /** Comments, texts and marks between arguments; the one group that takes part is empty where a thing is open. */
    private static final Pattern TOKEN = Pattern.compile("//[^\\n]*+()"
            + "|/\\*[\\s\\S]*?(\\*/|\\z)"
            + "|\"\"\"[\\s\\S]*?(\"\"\"|\\z)"
            + "|\"[^\"\\\\\\n]*+(?:\\\\.[^\"\\\\\\n]*+)*+(\"?)"
            + "|'[^'\\\\\\n]*+(?:\\\\.[^'\\\\\\n]*+)*+'?"
            + "|[(\\[{}\\]),]");

    /** The place at the end of a code. */
    static Caret atEndOf(String code) {
        Deque<Integer> commas = new ArrayDeque<>();
        commas.push(0);
        for (MatchResult token : TOKEN.matcher(code).results().toList()) {
            if (token.end() == code.length() && isOpen(token)) {
                return opened(token, commas.peek());
            }
            count(token.group(), commas);
        }
        return new Caret(Place.CODE, code.length(), commas.peek());
    }

    private static boolean isOpen(MatchResult token) {
        for (int group = 1; group <= token.groupCount(); group++) {
            if (token.group(group) != null && token.group(group).isEmpty()) {
                return true;
            }
        }
        return false;
    }

    private static Caret opened(MatchResult token, int argument) {
        boolean text = token.group().startsWith("\"");
        int quotes = token.group().startsWith("\"\"\"") ? 3 : 1;
        return text
                ? new Caret(Place.TEXT, token.start() + quotes, argument)
                : new Caret(Place.COMMENT, token.start(), argument);
    }

    private static void count(String token, Deque<Integer> commas) {
        if (token.matches("[(\\[{]")) {
            commas.push(0);
        } else if (token.matches("[)\\]}]") && commas.size() > 1) {
            commas.pop();
        } else if (token.equals(",")) {
            commas.push(commas.pop() + 1);
        }
    }
}
