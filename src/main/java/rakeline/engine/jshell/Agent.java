package rakeline.engine.jshell;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.net.InetAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import rakeline.prelude.Surroundings;

/**
 * The worker's main class. It calls its host back at the port that it reads, with a secret, from standard input, and
 * does what the host asks, one thing after another; when the connection ends, so does the process, whatever runs.
 */
public final class Agent {
    private Agent() {}

    public static void main(String[] args) throws IOException {
        BufferedReader from = new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8));
        int port = Integer.parseInt(from.readLine());
        Wire wire = new Wire(new Socket(InetAddress.getLoopbackAddress(), port));
        String secret = from.readLine();
        wire.send(Wire.Kind.HELLO, out -> out.text(secret));
        System.setIn(InputStream.nullInputStream());
        serve(wire);
    }

    private static void serve(Wire wire) {
        BlockingQueue<Wire.Frame> asked = new LinkedBlockingQueue<>();
        WorkerSurroundings surroundings = new WorkerSurroundings();
        Surroundings.set(surroundings);
        RowThreads threads = new RowThreads();
        Bench bench = new Bench(wire, surroundings, threads);
        RowThread rows = threads.start(() -> bench.work(asked));
        Thread watch = new Thread(() -> threads.watch(rows), "watch");
        watch.setDaemon(true);
        watch.start();
        Runtime.getRuntime().addShutdownHook(new Thread(() -> sayExiting(wire)));
        listen(wire, asked);
    }

    /** Reads until the connection ends; this is also what keeps a worker from outliving its host. */
    private static void listen(Wire wire, BlockingQueue<Wire.Frame> asked) {
        try {
            while (true) {
                asked.add(wire.receive());
            }
        } catch (IOException e) {
            Runtime.getRuntime().halt(0);
        }
    }

    private static void sayExiting(Wire wire) {
        System.out.flush();
        try {
            wire.send(Wire.Kind.EXITING, out -> {});
        } catch (IOException e) {
            Runtime.getRuntime().halt(0);
        }
    }
}
