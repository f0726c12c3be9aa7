package rakeline.shell.ledger;

import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import javax.swing.KeyStroke;
import javax.swing.text.JTextComponent;
import org.commonmark.node.Text;
import org.commonmark.renderer.html.HtmlRenderer;
import org.fife.ui.autocomplete.AutoCompletion;
import org.fife.ui.autocomplete.BasicCompletion;
import org.fife.ui.autocomplete.Completion;
import org.fife.ui.autocomplete.DefaultCompletionProvider;
import org.fife.ui.rsyntaxtextarea.RSyntaxTextArea;
import rakeline.shell.look.Look;
import rakeline.shell.page.Bench;
import rakeline.shell.page.PageModel;

/** Completes what is typed in a snippet: in code what Java accepts there, in quotes the keys and files that exist. */
final class WordHelp extends AutoCompletion {
    static final KeyStroke COMPLETE = KeyStroke.getKeyStroke(KeyEvent.VK_SPACE, InputEvent.CTRL_DOWN_MASK);

    /** The size of the list and of what stands beside it, in pixels at scale 1. */
    private static final int WIDTH = 360;

    private static final int HEIGHT = 200;

    private final CodeHelp help;
    private final Bench bench;
    private final String row;
    private final Words words;

    private WordHelp(CodeHelp help, Bench bench, String row, Words words) {
        super(words);
        this.help = help;
        this.bench = bench;
        this.row = row;
        this.words = words;
    }

    static void install(RSyntaxTextArea editor, Look look, CodeHelp help, Bench bench, String row) {
        WordHelp completion = new WordHelp(help, bench, row, new Words());
        completion.setTriggerKey(COMPLETE);
        completion.setChoicesWindowSize(look.px(WIDTH), look.px(HEIGHT));
        completion.setShowDescWindow(true);
        completion.setDescriptionWindowSize(look.px(WIDTH), look.px(HEIGHT));
        completion.setAutoCompleteSingleChoices(false);
        completion.install(editor);
        help.warmUp();
    }

    /** Asks where what was offered last does not hold any more; the answer is shown if it still fits what is typed. */
    @Override
    protected int refreshPopupWindow() {
        JTextComponent editor = getTextComponent();
        String before = Words.upToCaret(editor);
        if (!words.isFor(before)) {
            int caret = editor.getCaretPosition();
            PageModel now = bench.model();
            help.ask(now.page().withText(row, editor.getText()), now.origin().folder(), row, caret, offered -> {
                words.take(before, offered);
                if (words.isFor(Words.upToCaret(editor)) && editor.isShowing()) {
                    super.refreshPopupWindow();
                    sayWhereNoneFits();
                }
            });
        }
        return super.refreshPopupWindow();
    }

    private void sayWhereNoneFits() {
        if (!isPopupVisible()) {
            bench.say("no word is known that fits here");
        }
    }

    /** What was offered last, as far as it still fits what is typed. */
    static final class Words extends DefaultCompletionProvider {
        private String offeredFor = "";
        private CodeHelp.Offered offered = new CodeHelp.Offered(Integer.MAX_VALUE, List.of());

        private Completion completion(CodeHelp.Word word) {
            BasicCompletion completion =
                    new BasicCompletion(this, word.text(), word.brief().isEmpty() ? null : word.brief()) {
                        @Override
                        public String getSummary() {
                            return html(word.entry());
                        }
                    };
            completion.setRelevance(-offered.words().indexOf(word));
            return completion;
        }

        static String upToCaret(JTextComponent editor) {
            return editor.getText()
                    .substring(
                            0,
                            Math.min(editor.getCaretPosition(), editor.getText().length()));
        }

        /** Whether what was offered still holds: no more was typed since than a word that was offered begins with. */
        boolean isFor(String before) {
            int from = offered.from();
            return before.length() >= from
                    && offeredFor.length() >= from
                    && before.substring(0, from).equals(offeredFor.substring(0, from))
                    && (before.equals(offeredFor) || !fitting(before).isEmpty());
        }

        void take(String before, CodeHelp.Offered some) {
            offeredFor = before;
            offered = some;
        }

        private List<CodeHelp.Word> fitting(String before) {
            String typed = before.substring(offered.from()).toLowerCase(Locale.ROOT);
            return offered.words().stream()
                    .filter(word -> word.text().toLowerCase(Locale.ROOT).startsWith(typed))
                    .toList();
        }

        @Override
        public String getAlreadyEnteredText(JTextComponent editor) {
            String before = upToCaret(editor);
            return isFor(before) ? before.substring(offered.from()) : super.getAlreadyEnteredText(editor);
        }

        @Override
        protected List<Completion> getCompletionsImpl(JTextComponent editor) {
            String before = upToCaret(editor);
            return isFor(before)
                    ? fitting(before).stream().map(this::completion).collect(Collectors.toList())
                    : new ArrayList<>();
        }
    }

    /** Lines of plain text as paragraphs. */
    static String html(List<String> lines) {
        HtmlRenderer renderer = HtmlRenderer.builder().build();
        return lines.stream()
                .map(line -> renderer.render(new Text(line)))
                .collect(Collectors.joining("<br><br>", "<html><body>", "</body></html>"));
    }
}
