package rakeline.handout;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Arabic letters as they are joined: each in the form that its neighbours ask for, lam and alef as one. The forms are
 * read off Java's Unicode data: a code point of the blocks of presentation forms decomposes to its letter, and those of
 * one letter follow each other as alone, final, initial, medial; letters that join to the one before alone have two.
 *
 * <p>Source: The Unicode Standard, 9.2, Arabic, and the blocks FB50 and FE70 (from memory).
 */
final class ArabicForms {
    private static final int ALONE = 0;
    private static final int FINAL = 1;
    private static final int INITIAL = 2;
    private static final int MEDIAL = 3;

    private static final int LAM = 0x0644;
    private static final int TATWEEL = 0x0640;
    private static final int JOINER = 0x200D;
    private static final Map<String, List<Integer>> FORMS = forms();

    private ArabicForms() {}

    private static Map<String, List<Integer>> forms() {
        Map<String, List<Integer>> forms = new HashMap<>();
        collect(forms, 0xFE80, 0xFEFC);
        collect(forms, 0xFB50, 0xFBB1);
        collect(forms, 0xFBD3, 0xFBE9);
        collect(forms, 0xFBFC, 0xFBFF);
        return forms;
    }

    private static void collect(Map<String, List<Integer>> forms, int from, int to) {
        for (int form = from; form <= to; form++) {
            String letters = Normalizer.normalize(Character.toString(form), Normalizer.Form.NFKC);
            forms.computeIfAbsent(letters, any -> new ArrayList<>()).add(form);
        }
    }

    /** Words in the order in which they are read, letters joined. */
    static String joined(String words) {
        return words.codePoints().noneMatch(ArabicForms::joins) ? words : new Joining(words).joined();
    }

    /** Letters as they were before they were joined. */
    static String apart(String words) {
        StringBuilder apart = new StringBuilder();
        words.codePoints()
                .forEach(letter -> apart.append(
                        isForm(letter)
                                ? Normalizer.normalize(Character.toString(letter), Normalizer.Form.NFKC)
                                : Character.toString(letter)));
        return apart.toString();
    }

    private static boolean isForm(int letter) {
        return (letter >= 0xFB50 && letter <= 0xFBFF) || (letter >= 0xFE80 && letter <= 0xFEFC);
    }

    private static boolean joins(int letter) {
        return FORMS.containsKey(Character.toString(letter));
    }

    private static boolean joinsOnward(int letter) {
        return letter == TATWEEL || letter == JOINER || count(letter) > INITIAL;
    }

    private static boolean joinsBackward(int letter) {
        return letter == TATWEEL || letter == JOINER || count(letter) > FINAL;
    }

    private static int count(int letter) {
        return FORMS.getOrDefault(Character.toString(letter), List.of()).size();
    }

    /** Marks above and below stand between letters and part none. */
    private static boolean isMark(int letter) {
        return Character.getType(letter) == Character.NON_SPACING_MARK;
    }

    /** One text being joined. */
    private static final class Joining {
        private final int[] letters;

        Joining(String words) {
            letters = words.codePoints().toArray();
        }

        String joined() {
            StringBuilder joined = new StringBuilder();
            for (int i = 0; i < letters.length; i++) {
                if (isLamAlef(i)) {
                    joined.appendCodePoint(FORMS.get(pair(i)).get(isJoinedBefore(i) ? FINAL : ALONE));
                    i++;
                } else {
                    joined.appendCodePoint(form(i));
                }
            }
            return joined.toString();
        }

        private boolean isLamAlef(int at) {
            return letters[at] == LAM && at + 1 < letters.length && FORMS.containsKey(pair(at));
        }

        private String pair(int at) {
            return Character.toString(letters[at]) + Character.toString(letters[at + 1]);
        }

        private int form(int at) {
            List<Integer> forms = FORMS.get(Character.toString(letters[at]));
            if (forms == null) {
                return letters[at];
            }
            boolean before = forms.size() > FINAL && isJoinedBefore(at);
            boolean after = forms.size() > INITIAL && isJoinedAfter(at);
            return forms.get(before ? after ? MEDIAL : FINAL : after ? INITIAL : ALONE);
        }

        private boolean isJoinedBefore(int at) {
            int before = at - 1;
            while (before >= 0 && isMark(letters[before])) {
                before--;
            }
            return before >= 0 && joinsOnward(letters[before]);
        }

        private boolean isJoinedAfter(int at) {
            int after = at + 1;
            while (after < letters.length && isMark(letters[after])) {
                after++;
            }
            return after < letters.length && joinsBackward(letters[after]);
        }
    }
}
