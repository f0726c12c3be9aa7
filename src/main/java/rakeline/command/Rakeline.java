package rakeline.command;

import java.io.OutputStreamWriter;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
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
        List<Work> commands = commands(console, vocabulary, window);
        String[] words = isFile(commands, arguments) ? withOpen(arguments) : arguments;
        int code = line(console, asked(commands, words)).execute(words);
        console.data().flush();
        Optional<String> lost = console.lost().get();
        lost.ifPresent(console::message);
        return lost.isPresent() ? Work.REFUSED : code;
    }

    private static List<Work> commands(Console console, Vocabulary vocabulary, Window window) {
        return List.of(
                new OpenCommand(console, window),
                new RunCommand(console),
                new HandoutCommand(console, vocabulary),
                new MeasureCommand(console, vocabulary),
                new SweepCommand(console, vocabulary),
                new MapCommand(console, vocabulary),
                new SeekCommand(console, vocabulary),
                new SolveCommand(console, vocabulary),
                new SensitivityCommand(console, vocabulary),
                new SpreadCommand(console, vocabulary),
                new SizesCommand(console, vocabulary),
                new RefitCommand(console, vocabulary),
                new PostureCommand(console, vocabulary),
                new MatchCommand(console),
                new CompareCommand(console, vocabulary),
                new LimitsCommand(console, vocabulary),
                new ReportCommand(console, vocabulary),
                new StabilityCommand(console),
                new ResponseCommand(console),
                new TurnCommand(console, vocabulary),
                new CheckCommand(console, vocabulary),
                new ReconcileCommand(console, vocabulary),
                new ImportCommand(console),
                new ExportCommand(console),
                new KeysCommand(console, vocabulary));
    }

    /** The command that is named, alone: to read what all of them declare takes longer than most of them work. */
    private static List<Work> asked(List<Work> commands, String... words) {
        List<Work> named = commands.stream()
                .filter(command -> words.length > 0 && isCalled(command, words[0]))
                .toList();
        return named.isEmpty() ? commands : named;
    }

    private static boolean isCalled(Work command, String word) {
        return command.getClass().getAnnotation(Command.class).name().equals(word);
    }

    private static CommandLine line(Console console, List<Work> commands) {
        CommandLine line = new CommandLine(new Rakeline());
        commands.forEach(line::addSubcommand);
        standardOptions(line);
        line.getSubcommands().values().forEach(Rakeline::standardOptions);
        return line.setOut(writer(console.data()))
                .setErr(writer(console.messages()))
                .setParameterExceptionHandler((exception, arguments) -> refuse(console, exception))
                .setExpandAtFiles(false)
                .setUsageHelpAutoWidth(true);
    }

    /** A first word that is neither a command nor an option is a file to open; no words at all open the welcome page. */
    private static boolean isFile(List<Work> commands, String... arguments) {
        return arguments.length == 0
                || (arguments.length == 1
                        && !arguments[0].startsWith("-")
                        && commands.stream().noneMatch(command -> isCalled(command, arguments[0])));
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
