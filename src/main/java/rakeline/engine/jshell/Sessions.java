package rakeline.engine.jshell;

import java.util.Optional;
import java.util.stream.Stream;
import rakeline.engine.Inspection;
import rakeline.engine.Session;
import rakeline.engine.Suggestions;
import rakeline.worksheet.Worksheet;

/** Opens sessions. */
public final class Sessions {
    private Sessions() {}

    /** Opens a session; its worker starts in the background. */
    public static Session open(Session.Settings settings) {
        return new JShellSession(settings, new WorkerLauncher(settings));
    }

    /** Tells from the page's source, without running anything, what cannot run and which dials there are. */
    public static Inspection inspect(Worksheet page) {
        try (Inspector inspector = new Inspector()) {
            return inspector.inspect(page);
        }
    }

    /** Opens what says which words fit; it begins in the background of its first question. */
    public static Suggestions suggestions() {
        return new WordFinder();
    }

    /**
     * What this Java lacks to run rows.
     *
     * @return one sentence that names the missing module and the Java, or empty
     */
    public static Optional<String> missingModule() {
        return missingModule(ModuleLayer.boot());
    }

    static Optional<String> missingModule(ModuleLayer layer) {
        return Stream.of("jdk.jshell", "jdk.jdi", "jdk.compiler", "jdk.zipfs", "jdk.jdwp.agent")
                .filter(name -> layer.findModule(name).isEmpty())
                .findFirst()
                .map(name -> "The Java at " + System.getProperty("java.home") + " lacks the module " + name
                        + ", which running rows needs; a JDK 17 or newer has it.");
    }
}
