package rakeline.handout;

import java.util.Arrays;
import java.util.Set;

/**
 * The glyphs of a font program in Compact Font Format, of which some are emptied in place: their outlines become
 * nothing that takes room once compressed, and no offset moves.
 *
 * <p>Source: Adobe Technical Note 5176, "The Compact Font Format Specification" (2003), sections 4, 5 and 9; from
 * memory, confirmed by drawing with the fonts that come out.
 */
final class CffGlyphs {
    private static final byte END_OF_GLYPH = 14;
    private static final int CHAR_STRINGS = 17;
    private static final int CID_KEYED = (12 << 8) | 30;

    private final byte[] program;
    private int charStrings;
    private boolean isCidKeyed;

    private CffGlyphs(byte... program) {
        this.program = program.clone();
        Index names = new Index(program[2] & 0xFF);
        Index dictionaries = new Index(names.end());
        readDictionary(dictionaries.start(0), dictionaries.start(1));
    }

    /** The program with all glyphs but these emptied; the first, which stands for missing ones, is kept. */
    static byte[] keeping(Set<Integer> kept, byte... program) {
        CffGlyphs glyphs = new CffGlyphs(program);
        if (glyphs.isCidKeyed || glyphs.charStrings == 0) {
            return program.clone();
        }
        return glyphs.emptied(kept);
    }

    private byte[] emptied(Set<Integer> kept) {
        Index index = new Index(charStrings);
        byte[] out = program.clone();
        for (int glyph = 1; glyph < index.count; glyph++) {
            if (!kept.contains(glyph)) {
                Arrays.fill(out, index.start(glyph), index.start(glyph + 1), END_OF_GLYPH);
            }
        }
        return out;
    }

    /** Looks for where the glyphs are; an operator follows its operands. */
    private void readDictionary(int from, int to) {
        int operand = 0;
        for (int at = from; at < to; ) {
            int first = program[at] & 0xFF;
            if (first <= 21) {
                int operator = first == 12 ? (first << 8) | (program[at + 1] & 0xFF) : first;
                take(operator, operand);
                at += first == 12 ? 2 : 1;
            } else {
                operand = operand(at, first);
                at += length(at, first);
            }
        }
    }

    private void take(int operator, int operand) {
        charStrings = operator == CHAR_STRINGS ? operand : charStrings;
        isCidKeyed |= operator == CID_KEYED;
    }

    private int operand(int at, int first) {
        if (first == 28) {
            return (short) number(at + 1, 2);
        }
        if (first == 29) {
            return number(at + 1, 4);
        }
        if (first >= 247 && first <= 250) {
            return (first - 247) * 256 + number(at + 1, 1) + 108;
        }
        return first >= 251 ? -(first - 251) * 256 - number(at + 1, 1) - 108 : first - 139;
    }

    private int length(int at, int first) {
        if (first == 30) {
            int end = at + 1;
            while ((program[end] & 0x0F) != 0x0F) {
                end++;
            }
            return end + 1 - at;
        }
        return first == 28 ? 3 : first == 29 ? 5 : first >= 247 ? 2 : 1;
    }

    private int number(int at, int bytes) {
        int number = 0;
        for (int i = 0; i < bytes; i++) {
            number = (number << 8) | (program[at + i] & 0xFF);
        }
        return number;
    }

    /** A list of pieces of the program: their count, the size of an offset, the offsets, the pieces. */
    private final class Index {
        private final int at;
        private final int count;
        private final int offsetSize;

        Index(int at) {
            this.at = at;
            count = number(at, 2);
            offsetSize = count == 0 ? 0 : number(at + 2, 1);
        }

        int start(int piece) {
            int data = at + 3 + (count + 1) * offsetSize - 1;
            return data + number(at + 3 + piece * offsetSize, offsetSize);
        }

        int end() {
            return count == 0 ? at + 2 : start(count);
        }
    }
}
