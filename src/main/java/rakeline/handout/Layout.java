package rakeline.handout;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import rakeline.figure.Figure;
import rakeline.figure.Table;
import rakeline.figure.paint.Palette;
import rakeline.figure.paint.Svg;

/** Lays a sheet out as one XHTML text. */
final class Layout {
    /** Of a figure, in CSS px: the text's width on paper. */
    static final int FIGURE_WIDTH = 672;

    private static final int SHORT_LETTERS = 2000;
    private static final int SHORT_LINES = 24;

    /** Of a small drawing beside words, in CSS px. */
    private static final int DRAWING_WIDTH = 260;

    private static final String STYLE = style();

    private final Markup out = new Markup();
    private final Headings headings = new Headings();
    private final CautionMarkup cautions = new CautionMarkup();
    private final List<Figure> figures = new ArrayList<>();

    private Layout() {}

    static Laid of(Sheet sheet) {
        Layout layout = new Layout();
        layout.write(sheet);
        return new Laid(layout.out.toString(), sheet.title(), layout.figures, sheet.form());
    }

    private void write(Sheet sheet) {
        out.put("<!DOCTYPE html>").line();
        out.open("html", "xmlns", "http://www.w3.org/1999/xhtml", "lang", "en").line();
        head(sheet);
        String form = sheet.form() == Sheet.Form.ONE_PAGE ? "close" : "pages";
        out.open("body", "class", form).open("main").line();
        out.open("header").element("h1", titleOf(sheet), "dir", "auto");
        if (!sheet.about().isBlank()) {
            out.element("p", sheet.about(), "class", "about", "dir", "auto");
        }
        out.close().line();
        sheet.blocks().forEach(this::write);
        imprint(sheet.imprint());
        out.close().close().line().close().line();
    }

    private void head(Sheet sheet) {
        out.open("head").line();
        out.lone("meta", "charset", "utf-8").line();
        out.lone("meta", "name", "viewport", "content", "width=device-width, initial-scale=1")
                .line();
        out.lone("meta", "name", "color-scheme", "content", "light dark").line();
        out.lone(
                        "meta",
                        "http-equiv",
                        "Content-Security-Policy",
                        "content",
                        "default-src 'none'; style-src 'unsafe-inline'")
                .line();
        out.element("title", titleOf(sheet)).line();
        out.open("style").put(STYLE).close().line();
        out.close().line();
    }

    private static String titleOf(Sheet sheet) {
        return sheet.title().isBlank() ? "Untitled" : sheet.title();
    }

    private void imprint(List<String> lines) {
        out.open("footer");
        lines.forEach(line -> out.element("p", line, "dir", "auto"));
        out.close();
    }

    private void write(Block block) {
        if (block instanceof Block.Heading heading) {
            headings.write(out, heading.level(), heading.words());
        } else if (block instanceof Block.Beside beside) {
            write(beside);
        } else if (block instanceof Block.Answered answered) {
            write(answered);
        } else if (block instanceof Block.ToWrite lines) {
            write(lines);
        } else if (block instanceof Block.Prose prose) {
            NoteMarkup.write(prose, out, headings);
        } else if (block instanceof Block.Words words) {
            write(words);
        } else if (block instanceof Block.Cautioned cautioned) {
            cautions.write(cautioned.cautions(), out);
        } else if (block instanceof Block.Named named) {
            write(named);
        } else if (block instanceof Block.Lines lines) {
            write(lines);
        } else if (block instanceof Block.Shown shown) {
            write(shown.figure());
        } else if (block instanceof Block.Explained explained) {
            write(explained);
        }
        out.line();
    }

    private void write(Block.Beside beside) {
        out.open("div", "class", "beside").line();
        for (Block block : beside.blocks()) {
            out.open("div", "class", "side").line();
            write(block);
            out.close().line();
        }
        out.close();
    }

    private void write(Block.Answered answered) {
        out.open("div", "class", "answer")
                .element("p", "Answer", "class", "label")
                .line();
        answered.blocks().forEach(this::write);
        out.close();
    }

    private void write(Block.ToWrite lines) {
        out.open("div", "class", lines.lines() == 1 ? "write one" : "write")
                .element("p", lines.label(), "class", "label");
        IntStream.range(0, lines.lines()).forEach(i -> out.element("div", "", "class", "rule"));
        out.close();
    }

    private void write(Block.Words words) {
        String tone = words.tone().name().toLowerCase(Locale.ROOT);
        out.element("p", words.words(), "class", tone, "dir", "auto");
    }

    private void write(Block.Named named) {
        out.open("p", "class", "named").element("b", named.name()).text(" ");
        out.element("span", named.value(), "dir", "auto").close();
    }

    private void write(Figure figure) {
        if (figure instanceof Table table) {
            TableMarkup.write(table, cautions, out);
            return;
        }
        Figure bare = figure.withCautions(List.of());
        figures.add(bare);
        out.open("figure");
        out.put(Svg.inline(bare, FIGURE_WIDTH, Palette.LIGHT, "figure" + figures.size()));
        out.close();
        cautions.write(figure.cautions(), out);
    }

    /** A page's end cuts long ones alone. */
    private void write(Block.Lines lines) {
        boolean isShort =
                lines.text().length() < SHORT_LETTERS && lines.text().lines().count() <= SHORT_LINES;
        out.open("pre", "class", isShort ? "short" : "long")
                .element("code", lines.text())
                .close();
    }

    private void write(Block.Explained explained) {
        out.open("dl").line();
        explained.entries().forEach(this::write);
        out.close();
    }

    private void write(Block.Entry entry) {
        out.open("div", "class", "entry");
        out.open("dt").text(entry.label() + " ").element("code", entry.key()).close();
        entry.drawing().ifPresent(this::drawn);
        entry.lines().forEach(line -> out.element("dd", line));
        cautions.write("dd", entry.cautions(), out);
        out.close().line();
    }

    /** Beside the lines that it belongs to. */
    private void drawn(Figure figure) {
        Figure drawing = figure.withCautions(List.of());
        figures.add(drawing);
        out.open("dd", "class", "drawing").open("figure");
        out.put(Svg.inline(drawing, DRAWING_WIDTH, Palette.LIGHT, "figure" + figures.size()));
        out.close().close();
    }

    private static String style() {
        try (InputStream in = Layout.class.getResourceAsStream("/rakeline/handout/handout.css")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException("the style is part of the program", e);
        }
    }
}
