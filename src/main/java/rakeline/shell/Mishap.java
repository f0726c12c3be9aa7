package rakeline.shell;

import java.awt.Component;
import java.awt.Toolkit;
import java.awt.datatransfer.StringSelection;
import java.lang.Thread.UncaughtExceptionHandler;
import java.util.Arrays;
import java.util.Locale;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Supplier;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.SwingUtilities;
import rakeline.desk.Version;
import rakeline.shell.look.Ask;

/** Tells of an error of the program itself, with details that can be copied; nothing is sent anywhere. */
final class Mishap implements UncaughtExceptionHandler {
    private static final Logger LOG = Logger.getLogger(Mishap.class.getName());
    private static final String WORDS = "Something in Rakeline itself went wrong. Your page is as it was, and what you"
            + " typed is kept. Save it, and if this comes again, start Rakeline anew.";

    private final Supplier<Component> over;
    private final AtomicBoolean told = new AtomicBoolean();

    /**
     * @param over the component that the dialog stands over
     */
    Mishap(Supplier<Component> over) {
        this.over = over;
    }

    /** Takes every exception that nothing else takes from now on. */
    void install() {
        Thread.setDefaultUncaughtExceptionHandler(this);
    }

    @Override
    public void uncaughtException(Thread thread, Throwable thrown) {
        LOG.log(Level.SEVERE, "not expected, on thread " + thread.getName(), thrown);
        if (told.compareAndSet(false, true)) {
            SwingUtilities.invokeLater(() -> tell(details(thrown)));
        }
    }

    private void tell(String details) {
        JTextArea shown = new JTextArea(details, 12, 60);
        shown.setEditable(false);
        shown.setName("details");
        shown.getAccessibleContext().setAccessibleName("Details");
        int answer = Ask.among(
                over.get(), new Object[] {WORDS, new JScrollPane(shown)}, "An error", 1, "Copy details", "Go on");
        if (answer == 0) {
            Toolkit.getDefaultToolkit().getSystemClipboard().setContents(new StringSelection(details), null);
        }
        told.set(false);
    }

    /** Version, Java, system, and of the exception and its causes the class and the stack; no text of the page. */
    static String details(Throwable thrown) {
        String stacks = Stream.iterate(thrown, each -> each != null, Throwable::getCause)
                .map(each -> each.getClass().getName() + "\n"
                        + Arrays.stream(each.getStackTrace())
                                .map(frame -> "    at " + frame + "\n")
                                .collect(Collectors.joining()))
                .collect(Collectors.joining());
        return system() + "\n" + stacks;
    }

    /** Version, Java and system, a line each. */
    static String system() {
        return String.join(
                "\n",
                "Rakeline " + Version.number(),
                "Java " + property("java.version") + ", " + property("java.vendor"),
                "System " + property("os.name") + " " + property("os.version") + ", " + property("os.arch"),
                "Language " + Locale.getDefault().toLanguageTag());
    }

    private static String property(String name) {
        return System.getProperty(name, "unknown");
    }
}
