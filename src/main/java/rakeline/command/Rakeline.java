package rakeline.command;

import java.io.OutputStreamWriter;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.Stream;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.IVersionProvider;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParameterException;
import rakeline.study.Vocabulary;

/** The program as a command: its subcommands, their help and their exit codes. */
@Command(
        name = "rakeline",
        description = "A workbench for bicycle geometry.",
        versionProvider = Rakeline.Version.class,
        synopsisSubcommandLabel = "COMMAND",
        footer = {"", "A single FILE opens it: rakeline FILE is rakeline open FILE."})
public final class Rakeline {
    /** The window, given by the root package, which alone knows both it and the commands. */
    public interface Window {
        /**
         * Whether there is a display to open a window on.
         *
         * @throws rakeline.quantity.Refusal where one is named that cannot be reached
         */
        boolean hasDisplay();

        /**
         * Opens a worksheet, or the welcome page where there is none.
         *
         * @return the exit code once the window is closed
         */
        int open(Optional<Path> file);
    }

    /**
     * Runs one command line.
     *
     * @return the exit code: 0 done, 1 a row or check failed, 2 wrong use or unreadable input
     */
    public static int run(Console console, Vocabulary vocabulary, Window window, String... arguments) {
        CommandLine line = line(console, vocabulary, window);
        int code = line.execute(isFile(line, arguments) ? withOpen(arguments) : arguments);
        console.data().flush();
        Optional<String> lost = console.lost().get();
        lost.ifPresent(console::message);
        return lost.isPresent() ? Work.REFUSED : code;
    }

    private static CommandLine line(Console console, Vocabulary vocabulary, Window window) {
        CommandLine line = new CommandLine(new Rakeline())
                .addSubcommand(new OpenCommand(console, window))
                .addSubcommand(new RunCommand(console))
                .addSubcommand(new HandoutCommand(console, vocabulary))
                .addSubcommand(new MeasureCommand(console, vocabulary))
                .addSubcommand(new SweepCommand(console, vocabulary))
                .addSubcommand(new MapCommand(console, vocabulary))
                .addSubcommand(new SeekCommand(console, vocabulary))
                .addSubcommand(new SolveCommand(console, vocabulary))
                .addSubcommand(new SensitivityCommand(console, vocabulary))
                .addSubcommand(new SpreadCommand(console, vocabulary))
                .addSubcommand(new SizesCommand(console, vocabulary))
                .addSubcommand(new RefitCommand(console, vocabulary))
                .addSubcommand(new PostureCommand(console, vocabulary))
                .addSubcommand(new MatchCommand(console))
                .addSubcommand(new CompareCommand(console, vocabulary))
                .addSubcommand(new LimitsCommand(console, vocabulary))
                .addSubcommand(new ReportCommand(console, vocabulary))
                .addSubcommand(new StabilityCommand(console))
                .addSubcommand(new ResponseCommand(console))
                .addSubcommand(new TurnCommand(console, vocabulary))
                .addSubcommand(new CheckCommand(console, vocabulary))
                .addSubcommand(new ReconcileCommand(console, vocabulary))
                .addSubcommand(new ImportCommand(console))
                .addSubcommand(new ExportCommand(console))
                .addSubcommand(new KeysCommand(console, vocabulary));
        standardOptions(line);
        line.getSubcommands().values().forEach(Rakeline::standardOptions);
        return line.setOut(writer(console.data()))
                .setErr(writer(console.messages()))
                .setParameterExceptionHandler((exception, arguments) -> refuse(console, exception))
                .setExpandAtFiles(false)
                .setUsageHelpAutoWidth(true);
    }

    /** A first word that is neither a command nor an option is a file to open; no words at all open the welcome page. */
    private static boolean isFile(CommandLine line, String... arguments) {
        return arguments.length == 0
                || (!arguments[0].startsWith("-")
                        && !line.getSubcommands().containsKey(arguments[0])
                        && arguments.length == 1);
    }

    private static String[] withOpen(String... arguments) {
        return Stream.concat(Stream.of("open"), Stream.of(arguments)).toArray(String[]::new);
    }

    private static void standardOptions(CommandLine line) {
        line.getCommandSpec()
                .versionProvider(new Version())
                .addOption(OptionSpec.builder("--help")
                        .usageHelp(true)
                        .description("Prints this and ends.")
                        .build())
                .addOption(OptionSpec.builder("--version")
                        .versionHelp(true)
                        .description("Prints the version and ends.")
                        .build());
    }

    private static PrintWriter writer(PrintStream stream) {
        return new PrintWriter(new OutputStreamWriter(stream, StandardCharsets.UTF_8), true);
    }

    private static int refuse(Console console, ParameterException exception) {
        String wrong = exception
                .getMessage()
                .lines()
                .findFirst()
                .orElse("wrong use")
                .replaceFirst("^Error: ", "")
                .replaceFirst(" is not an? (int|long)$", " is not a whole number");
        console.message(wrong + (wrong.endsWith(".") ? "" : ".") + " See "
                + exception.getCommandLine().getCommandSpec().qualifiedName() + " --help.");
        return Work.REFUSED;
    }

    /** The version that the build was made with. */
    public static final class Version implements IVersionProvider {
        @Override
        public String[] getVersion() {
            return new String[] {"Rakeline " + number()};
        }

        /** As in the pom. */
        public static String number() {
            return rakeline.desk.Version.number();
        }
    }
}
