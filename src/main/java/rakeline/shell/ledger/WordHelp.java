package rakeline.shell.ledger;

import java.awt.event.ActionEvent;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.util.Arrays;
import java.util.stream.Collectors;
import javax.swing.AbstractAction;
import javax.swing.JOptionPane;
import javax.swing.KeyStroke;
import javax.swing.text.BadLocationException;
import org.commonmark.node.Text;
import org.commonmark.renderer.html.HtmlRenderer;
import org.fife.ui.autocomplete.AutoCompletion;
import org.fife.ui.autocomplete.BasicCompletion;
import org.fife.ui.autocomplete.CompletionProvider;
import org.fife.ui.autocomplete.DefaultCompletionProvider;
import org.fife.ui.rsyntaxtextarea.RSyntaxTextArea;
import rakeline.help.Glossary;
import rakeline.prelude.Prelude;
import rakeline.quantity.Quantity;
import rakeline.study.Vocabulary;

/** Completes keys, constants and the words of the prelude while they are typed, and says what the word at the caret means. */
final class WordHelp {
    static final KeyStroke COMPLETE = KeyStroke.getKeyStroke(KeyEvent.VK_SPACE, InputEvent.CTRL_DOWN_MASK);
    static final KeyStroke EXPLAIN = KeyStroke.getKeyStroke(KeyEvent.VK_F1, InputEvent.SHIFT_DOWN_MASK);

    private final RSyntaxTextArea editor;
    private final Glossary glossary;
    private final Words words = new Words();

    private WordHelp(RSyntaxTextArea editor, Vocabulary vocabulary) {
        this.editor = editor;
        this.glossary = Glossary.of(vocabulary.quantities(), vocabulary.constants());
        fill();
    }

    /** What completes the word before an editor's caret. */
    static CompletionProvider words(Vocabulary vocabulary) {
        return new WordHelp(new RSyntaxTextArea(), vocabulary).words;
    }

    static void install(RSyntaxTextArea editor, Vocabulary vocabulary) {
        WordHelp help = new WordHelp(editor, vocabulary);
        AutoCompletion completion = new AutoCompletion(help.words);
        completion.setTriggerKey(COMPLETE);
        completion.setShowDescWindow(true);
        completion.setAutoCompleteSingleChoices(false);
        completion.install(editor);
        editor.getInputMap().put(EXPLAIN, EXPLAIN);
        editor.getActionMap().put(EXPLAIN, help.explaining());
    }

    private void fill() {
        glossary.beginning("").forEach(this::add);
        Prelude.FACADES.stream()
                .flatMap(facade -> Arrays.stream(facade.getDeclaredMethods()))
                .filter(method -> Modifier.isPublic(method.getModifiers()))
                .map(WordHelp::signature)
                .distinct()
                .sorted()
                .forEach(signature -> words.addCompletion(
                        new BasicCompletion(words, signature.substring(0, signature.indexOf('(') + 1), signature)));
    }

    private void add(String word, Quantity quantity) {
        words.addCompletion(new BasicCompletion(words, word, quantity.heading()) {
            @Override
            public String getSummary() {
                return html(quantity);
            }
        });
    }

    private static String signature(Method method) {
        return Arrays.stream(method.getParameters())
                .map(parameter -> parameter.getType().getSimpleName() + " " + parameter.getName())
                .collect(Collectors.joining(", ", method.getName() + "(", ")"));
    }

    private AbstractAction explaining() {
        return new AbstractAction() {
            @Override
            public void actionPerformed(ActionEvent event) {
                glossary.find(words.wordAt(editor))
                        .ifPresent(quantity -> JOptionPane.showMessageDialog(
                                editor, html(quantity), quantity.label(), JOptionPane.PLAIN_MESSAGE));
            }
        };
    }

    private String html(Quantity quantity) {
        HtmlRenderer renderer = HtmlRenderer.builder().build();
        return glossary.entry(quantity).stream()
                .map(line -> renderer.render(new Text(line)))
                .collect(Collectors.joining("<br><br>", "<html><body style='width: 320px'>", "</body></html>"));
    }

    /** Words as keys have them: with dots. */
    private static final class Words extends DefaultCompletionProvider {
        @Override
        protected boolean isValidChar(char letter) {
            return Character.isJavaIdentifierPart(letter) || letter == '.';
        }

        /** The word that the caret stands in, to both sides. */
        String wordAt(RSyntaxTextArea editor) {
            try {
                String text = editor.getText(0, editor.getDocument().getLength());
                int start = editor.getCaretPosition();
                int end = start;
                while (start > 0 && isValidChar(text.charAt(start - 1))) {
                    start--;
                }
                while (end < text.length() && isValidChar(text.charAt(end))) {
                    end++;
                }
                return text.substring(start, end);
            } catch (BadLocationException e) {
                throw new IllegalStateException("the text of an editor can be read on the event thread", e);
            }
        }
    }
}
