package rakeline.process;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;

/**
 * The built jar, started as people start it, in a process of its own without a display.
 *
 * @param locale as {@code LC_ALL} names it
 * @param folder the working directory
 */
record Program(Path jar, List<String> javaOptions, String locale, Path folder, Optional<String> display) {
    private static final long PATIENCE_SECONDS = 240;

    Program {
        javaOptions = List.copyOf(javaOptions);
    }

    /** As it was built, started from a folder. */
    static Program in(Path folder) {
        return new Program(Path.of(System.getProperty("rakeline.jar")), List.of(), "C.UTF-8", folder, Optional.empty());
    }

    /** As it was built, started from the project's folder. */
    static Program inTheProject() {
        return in(Path.of("").toAbsolutePath());
    }

    Program from(Path otherJar) {
        return new Program(otherJar, javaOptions, locale, folder, display);
    }

    Program under(String otherLocale) {
        return new Program(jar, javaOptions, otherLocale, folder, display);
    }

    Program with(String... options) {
        return new Program(jar, List.of(options), locale, folder, display);
    }

    /** With a display named. */
    Program on(String otherDisplay) {
        return new Program(jar, javaOptions, locale, folder, Optional.of(otherDisplay));
    }

    /** Runs a command to its end. */
    Ended run(String... arguments) {
        return ended(command(arguments), Optional.empty());
    }

    /** Runs a class of the tests to its end, with the built jar and the tests' own classes on its class path. */
    Ended runTest(Class<?> main, String... arguments) {
        String classPath =
                jar + File.pathSeparator + Path.of("target", "test-classes").toAbsolutePath();
        return ended(tool("java", List.of("-cp", classPath, main.getName()), arguments), Optional.empty());
    }

    /** Runs the JDK's own jshell on the built jar to its end, with lines as they are typed. */
    Ended runInJShell(String... lines) {
        List<String> options = List.of("--class-path", jar.toString(), "-s");
        return ended(tool("jshell", options, "-"), Optional.of(String.join("\n", lines) + "\n/exit\n"));
    }

    private Ended ended(List<String> command, Optional<String> typed) {
        try {
            Path streams = Files.createTempDirectory("rakeline-streams");
            Process process = start(streams, command, typed);
            if (!process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
                process.destroyForcibly();
                throw new AssertionError(String.join(" ", command) + " has not ended");
            }
            return new Ended(process.exitValue(), text(streams.resolve("out")), text(streams.resolve("err")));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        }
    }

    /** Starts a command whose streams go into two files of a folder. */
    Process start(Path streams, String... arguments) throws IOException {
        return start(streams, command(arguments), Optional.empty());
    }

    private Process start(Path streams, List<String> command, Optional<String> typed) throws IOException {
        Path input = Files.writeString(streams.resolve("in"), typed.orElse(""));
        ProcessBuilder builder = new ProcessBuilder(command)
                .directory(folder.toFile())
                .redirectOutput(streams.resolve("out").toFile())
                .redirectError(streams.resolve("err").toFile());
        Map<String, String> environment = builder.environment();
        List.of("DISPLAY", "LANG", "JAVA_TOOL_OPTIONS", "JDK_JAVA_OPTIONS").forEach(environment::remove);
        environment.put("LC_ALL", locale);
        display.ifPresent(name -> environment.put("DISPLAY", name));
        typed.ifPresent(text -> builder.redirectInput(input.toFile()));
        return builder.start();
    }

    private List<String> command(String... arguments) {
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.add("-Drakeline.home=" + System.getProperty("rakeline.home"));
        command.addAll(javaOptions);
        command.addAll(List.of("-jar", jar.toString()));
        command.addAll(List.of(arguments));
        return command;
    }

    private static List<String> tool(String name, List<String> options, String... arguments) {
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", name).toString());
        command.addAll(options);
        command.addAll(List.of(arguments));
        return command;
    }

    private static String text(Path file) throws IOException {
        return Files.readString(file, StandardCharsets.UTF_8);
    }
}
