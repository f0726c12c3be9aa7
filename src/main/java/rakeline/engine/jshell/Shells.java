package rakeline.engine.jshell;

import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import jdk.jshell.JShell;
import jdk.jshell.spi.ExecutionControl;
import jdk.jshell.spi.ExecutionControlProvider;
import jdk.jshell.spi.ExecutionEnv;

/** Opens JShells over engines of our own. */
final class Shells {
    /** A provider that has its engine already. */
    private record Ready(ExecutionControl engine) implements ExecutionControlProvider {
        @Override
        public String name() {
            return "rakeline";
        }

        @Override
        public ExecutionControl generate(ExecutionEnv env, Map<String, String> parameters) {
            return engine;
        }
    }

    private Shells() {}

    static JShell open(ExecutionControl engine) {
        PrintStream nowhere = new PrintStream(OutputStream.nullOutputStream(), false, StandardCharsets.UTF_8);
        return JShell.builder()
                .executionEngine(new Ready(engine), Map.of())
                .compilerOptions("-classpath", ClassPath.ofProgram())
                .in(InputStream.nullInputStream())
                .out(nowhere)
                .err(nowhere)
                .build();
    }
}
