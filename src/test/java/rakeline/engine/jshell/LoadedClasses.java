package rakeline.engine.jshell;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;

/** The classes that another Java process has loaded, as the JDK's own {@code jcmd} tells. */
final class LoadedClasses {
    private LoadedClasses() {}

    static List<String> of(long pid) throws IOException {
        Process jcmd = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "jcmd").toString(),
                        Long.toString(pid),
                        "VM.class_hierarchy")
                .redirectErrorStream(true)
                .start();
        String out = new String(jcmd.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        return out.lines()
                .map(line -> line.replaceFirst("^[|\\s-]*", "").replaceFirst("/.*", ""))
                .toList();
    }
}
