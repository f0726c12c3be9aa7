package rakeline.engine.jshell;

import com.sun.jdi.Bootstrap;
import com.sun.jdi.VirtualMachine;
import com.sun.jdi.connect.Connector;
import com.sun.jdi.connect.IllegalConnectorArgumentsException;
import com.sun.jdi.connect.ListeningConnector;
import java.io.File;
import java.io.IOException;
import java.io.Writer;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rakeline.engine.Session;

/**
 * Starts workers. The host listens on the loopback address for one connection of the agent, which must bring the secret
 * that was written to its standard input, and for one of the worker's debugging port; both listeners are closed then.
 */
final class WorkerLauncher {
    private static final int PATIENCE_MILLIS = 30_000;
    private static final int SECRET_BYTES = 32;

    private final Session.Settings settings;
    private final String agent;
    private final String classPath;

    WorkerLauncher(Session.Settings settings) {
        this(settings, Agent.class.getName(), List.of());
    }

    /**
     * @param agent the main class of the worker
     * @param more places that join its class path
     */
    WorkerLauncher(Session.Settings settings, String agent, List<String> more) {
        this.settings = settings;
        this.agent = agent;
        this.classPath = Stream.concat(Stream.of(ClassPath.ofProgram()), more.stream())
                .collect(Collectors.joining(File.pathSeparator));
    }

    /**
     * Starts a worker and waits until it answers.
     *
     * @throws IOException where no process can be started, or it does not call back
     */
    Worker start() throws IOException {
        ListeningConnector connector = socketConnector();
        Map<String, Connector.Argument> options = connector.defaultArguments();
        options.get("localAddress").setValue("127.0.0.1");
        options.get("timeout").setValue(Integer.toString(PATIENCE_MILLIS));
        try (ServerSocket listener = new ServerSocket(0, 2, InetAddress.getLoopbackAddress())) {
            String address = connector.startListening(options);
            return start(connector, options, address, listener);
        } catch (IllegalConnectorArgumentsException e) {
            throw new IOException("this Java cannot listen for a worker", e);
        }
    }

    private Worker start(
            ListeningConnector connector,
            Map<String, Connector.Argument> options,
            String address,
            ServerSocket listener)
            throws IOException, IllegalConnectorArgumentsException {
        Process process = launch(address);
        try {
            String secret = newSecret();
            introduce(process, listener.getLocalPort(), secret);
            VirtualMachine machine = connector.accept(options);
            Wire wire = acceptAgent(listener, secret);
            wire.send(Wire.Kind.FOLDERS, out -> out.texts(folders()).flag(settings.followsLinks()));
            return new Worker(process, wire, new Debugger(machine), settings.heapMegabytes());
        } catch (IOException | RuntimeException e) {
            process.destroyForcibly();
            throw e;
        } finally {
            connector.stopListening(options);
        }
    }

    private Process launch(String debugAddress) throws IOException {
        List<String> command = List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-agentlib:jdwp=transport=dt_socket,server=n,suspend=n,address=" + debugAddress,
                "-Xmx" + settings.heapMegabytes() + "m",
                "-XX:+ExitOnOutOfMemoryError",
                "-XX:+UseSerialGC",
                "-XX:-OmitStackTraceInFastThrow",
                "-Xshare:auto",
                "-Djava.awt.headless=true",
                "-Dfile.encoding=UTF-8",
                "-Duser.language=en",
                "-Duser.country=GB",
                "-cp",
                classPath,
                agent);
        return new ProcessBuilder(command)
                .directory(new File(System.getProperty("java.io.tmpdir")))
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
    }

    private static void introduce(Process process, int port, String secret) throws IOException {
        try (Writer to = process.outputWriter(StandardCharsets.UTF_8)) {
            to.write(port + "\n" + secret + "\n");
        }
    }

    /** Waits for the connection that brings the secret; others are turned away. */
    private static Wire acceptAgent(ServerSocket listener, String secret) throws IOException {
        listener.setSoTimeout(PATIENCE_MILLIS);
        while (true) {
            Socket socket = listener.accept();
            socket.setSoTimeout(PATIENCE_MILLIS);
            Wire wire = new Wire(socket);
            if (brings(secret, wire)) {
                socket.setSoTimeout(0);
                return wire;
            }
            wire.close();
        }
    }

    private static boolean brings(String secret, Wire wire) {
        try {
            Wire.Frame hello = wire.receive();
            return hello.kind() == Wire.Kind.HELLO
                    && MessageDigest.isEqual(hello.body().bytes(), secret.getBytes(StandardCharsets.UTF_8));
        } catch (IOException e) {
            return false; // a stranger that does not speak as our agent does
        }
    }

    private List<String> folders() {
        return Stream.of(settings.folder(), settings.userFolder())
                .flatMap(folder -> folder.stream())
                .map(folder -> folder.toAbsolutePath().toString())
                .toList();
    }

    private static String newSecret() {
        byte[] bytes = new byte[SECRET_BYTES];
        new SecureRandom().nextBytes(bytes);
        return HexFormat.of().formatHex(bytes);
    }

    private static ListeningConnector socketConnector() throws IOException {
        return Bootstrap.virtualMachineManager().listeningConnectors().stream()
                .filter(connector -> connector.transport().name().equals("dt_socket"))
                .findFirst()
                .orElseThrow(() -> new IOException("this Java has no debugging connection by socket"));
    }
}
