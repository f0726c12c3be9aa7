package rakeline.handout;

import java.util.List;
import java.util.Optional;
import rakeline.figure.Figure;
import rakeline.quantity.Caution;

/** One thing on a sheet, in the order in which it is read. */
public sealed interface Block {
    /** The same, its headings one level lower. */
    default Block lower() {
        return this;
    }

    /**
     * A heading.
     *
     * @param level 2 or more; the sheet's title is level 1
     */
    record Heading(int level, String words) implements Block {
        @Override
        public Block lower() {
            return new Heading(level + 1, words);
        }
    }

    /**
     * Prose in CommonMark; HTML in it is text, nothing in it is fetched.
     *
     * @param omitting a first heading that would only repeat the sheet's title; empty for none
     * @param under the level of the heading that it stands under
     */
    record Prose(String commonMark, String omitting, int under) implements Block {
        @Override
        public Block lower() {
            return new Prose(commonMark, omitting, under + 1);
        }
    }

    /** Things that stand beside each other where there is room. */
    record Beside(List<Block> blocks) implements Block {
        public Beside {
            blocks = List.copyOf(blocks);
        }
    }

    /** The answer to what stands before it. */
    record Answered(List<Block> blocks) implements Block {
        public Answered {
            blocks = List.copyOf(blocks);
        }

        @Override
        public Block lower() {
            return new Answered(blocks.stream().map(Block::lower).toList());
        }
    }

    /** Empty lines to write on by hand. */
    record ToWrite(String label, int lines) implements Block {}

    /** A paragraph as it is written. */
    record Words(Tone tone, String words) implements Block {}

    /** What can mislead or hurt someone: in full what the sheet has not said yet, the rest in a word. */
    record Cautioned(List<Caution> cautions) implements Block {
        public Cautioned {
            cautions = List.copyOf(cautions);
        }
    }

    /** A value under its name. */
    record Named(String name, String value) implements Block {}

    /** Lines of code, or of what was printed. */
    record Lines(String text) implements Block {}

    /** A chart, map or drawing as vectors, or a table as a table. */
    record Shown(Figure figure) implements Block {}

    /** Words, each with lines that explain it. */
    record Explained(List<Entry> entries) implements Block {
        public Explained {
            entries = List.copyOf(entries);
        }
    }

    /**
     * One word and its lines.
     *
     * @param key as in files and commands
     * @param drawing of what it means, small
     */
    record Entry(String label, String key, List<String> lines, List<Caution> cautions, Optional<Figure> drawing) {
        public Entry {
            cautions = List.copyOf(cautions);
            lines = List.copyOf(lines);
        }
    }

    /** How a paragraph speaks. */
    enum Tone {
        PLAIN,
        /** Lesser: what was held, where something came from. */
        QUIET,
        /** What went wrong. */
        TROUBLE
    }
}
