package rakeline.shell.ledger;

import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
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

/** Completes what is typed in a snippet: keys, constants, the words of the prelude, Java, the names of the rows above. */
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
        WordHelp completion = new WordHelp(help, bench, row, new Words(help.words()));
        completion.setTriggerKey(COMPLETE);
        completion.setChoicesWindowSize(look.px(WIDTH), look.px(HEIGHT));
        completion.setShowDescWindow(true);
        completion.setDescriptionWindowSize(look.px(WIDTH), look.px(HEIGHT));
        completion.setAutoCompleteSingleChoices(false);
        completion.install(editor);
        help.warmUp();
    }

    /** Offers what is known at once; what Java and the rows above add comes as soon as it is known. */
    @Override
    protected int refreshPopupWindow() {
        JTextComponent editor = getTextComponent();
        String before = Words.upToCaret(editor);
        if (!words.isFor(before)) {
            int caret = editor.getCaretPosition();
            help.ask(bench.model().page().withText(row, editor.getText()), row, caret, offered -> {
                if (Words.upToCaret(editor).equals(before) && editor.isShowing()) {
                    words.take(before, offered);
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

    /** What completes the word before the caret. Words as keys have them: with dots. */
    static final class Words extends DefaultCompletionProvider {
        private String offeredFor = "";
        private Optional<CodeHelp.Offered> offered = Optional.empty();

        Words(List<CodeHelp.Word> anywhere) {
            anywhere.forEach(word -> addCompletion(completion(word, word.text())));
        }

        private Completion completion(CodeHelp.Word word, String inserted) {
            return new BasicCompletion(this, inserted, word.brief().isEmpty() ? null : word.brief()) {
                @Override
                public String getSummary() {
                    return html(word.entry());
                }
            };
        }

        static String upToCaret(JTextComponent editor) {
            return editor.getText()
                    .substring(
                            0,
                            Math.min(editor.getCaretPosition(), editor.getText().length()));
        }

        /** Whether what was offered still holds: no more than letters of the same word were typed since. */
        boolean isFor(String before) {
            return offered.filter(some -> before.length() >= some.from()
                            && offeredFor.length() >= some.from()
                            && before.substring(0, some.from()).equals(offeredFor.substring(0, some.from()))
                            && before.substring(some.from()).chars().allMatch(Character::isJavaIdentifierPart))
                    .isPresent();
        }

        void take(String before, CodeHelp.Offered some) {
            offeredFor = before;
            offered = Optional.of(some);
        }

        @Override
        protected boolean isValidChar(char letter) {
            return Character.isJavaIdentifierPart(letter) || letter == '.';
        }

        @Override
        protected List<Completion> getCompletionsImpl(JTextComponent editor) {
            String before = upToCaret(editor);
            List<Completion> known = super.getCompletionsImpl(editor);
            if (!isFor(before) || isQuoted(before)) {
                return known;
            }
            Map<String, Completion> all = new TreeMap<>();
            offered(before, getAlreadyEnteredText(editor)).forEach(one -> all.put(one.getReplacementText(), one));
            known.forEach(one -> all.put(one.getReplacementText(), one));
            return new ArrayList<>(all.values());
        }

        private Stream<Completion> offered(String before, String entered) {
            int from = offered.orElseThrow().from();
            String typed = before.substring(from).toLowerCase(Locale.ROOT);
            String path = entered.substring(0, Math.max(0, entered.length() - typed.length()));
            return offered.orElseThrow().words().stream()
                    .filter(word -> word.text().toLowerCase(Locale.ROOT).startsWith(typed))
                    .map(word -> completion(word, path + word.text()));
        }

        /** Inside a text only keys make sense. */
        private static boolean isQuoted(String before) {
            String line = before.substring(before.lastIndexOf('\n') + 1);
            return line.chars().filter(letter -> letter == '"').count() % 2 == 1;
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
