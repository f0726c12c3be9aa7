package rakeline.engine.jshell;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import rakeline.engine.Unpacker;

/** A process that runs snippets, as its host sees it. One thread at a time speaks with it; any may stop or kill it. */
final class Worker implements AutoCloseable, Stopper.Target {
    /** The worker is gone. */
    static final class Lost extends Exception {
        private static final long serialVersionUID = 1L;

        Lost(String whatHappened, Throwable cause) {
            super(whatHappened, cause);
        }
    }

    /** A static method that runs a snippet, and the dial or picker that the snippet declares, or empty. */
    record Call(String className, String method, String control) {}

    private static final long FAREWELL_SECONDS = 2;

    private final Process process;
    private final Wire wire;
    private final Debugger debugger;
    private final int heapMegabytes;
    private volatile boolean killedByUs;

    Worker(Process process, Wire wire, Debugger debugger, int heapMegabytes) {
        this.process = process;
        this.wire = wire;
        this.debugger = debugger;
        this.heapMegabytes = heapMegabytes;
    }

    long pid() {
        return process.pid();
    }

    boolean isAlive() {
        return process.isAlive();
    }

    /** Completes once the process has ended, however that came. */
    CompletableFuture<Process> ended() {
        return process.onExit();
    }

    void tell(Wire.Kind kind, Wire.Body body) throws Lost {
        try {
            wire.send(kind, body);
        } catch (IOException e) {
            throw lost(e, false);
        }
    }

    void load(Map<String, byte[]> classes) throws Lost {
        tell(
                Wire.Kind.LOAD,
                out -> out.list(
                        List.copyOf(classes.entrySet()),
                        (to, named) -> to.text(named.getKey()).bytes(named.getValue())));
    }

    /** Has it do what most pages do while nothing else is asked of it, so that its first row is quick. */
    void rehearse() throws Lost {
        tell(Wire.Kind.REHEARSE, out -> {});
    }

    Answer invoke(Call call, boolean shown, Printed printed) throws Lost {
        return ask(
                Wire.Kind.INVOKE,
                out -> out.text(call.className())
                        .text(call.method())
                        .text(call.control())
                        .flag(shown),
                printed);
    }

    Answer show(String className, String variable, Printed printed) throws Lost {
        return ask(Wire.Kind.SHOW, out -> out.text(className).text(variable), printed);
    }

    /** Waits a moment for threads that are coming to their end, and notes what the row has left running. */
    void awaitThreads(Printed printed) throws Lost {
        ask(Wire.Kind.THREADS, out -> {}, printed);
    }

    void release(String className, String variable) throws Lost {
        tell(Wire.Kind.RELEASE, out -> out.text(className).text(variable));
    }

    void beginRow() throws Lost {
        tell(Wire.Kind.ROW, out -> {});
    }

    @Override
    public void interrupt() {
        debugger.stopSnippet();
    }

    @Override
    public void kill() {
        killedByUs = true;
        process.destroyForcibly();
    }

    @Override
    public void close() {
        kill();
        try {
            wire.close();
        } catch (IOException e) {
            throw new IllegalStateException("A closed connection cannot be closed.", e);
        }
    }

    private Answer ask(Wire.Kind kind, Wire.Body body, Printed printed) throws Lost {
        tell(kind, body);
        boolean orderly = false;
        try {
            while (true) {
                Wire.Frame frame = wire.receive();
                switch (frame.kind()) {
                    case PRINTED -> printed.add(frame.body().bytes());
                    case CUT -> printed.cut();
                    case READ -> printed.read(Stamp.read(frame.body()));
                    case EXITING -> orderly = true;
                    case ANSWER -> {
                        Unpacker in = frame.body();
                        printed.threads(new RowThreads.Running(in.number(), in.number()));
                        return Answer.read(in);
                    }
                    default -> throw new IOException("a host is not sent " + frame.kind());
                }
            }
        } catch (IOException | RuntimeException e) {
            throw lost(e, orderly);
        }
    }

    private Lost lost(Exception cause, boolean orderly) {
        try {
            if (!process.waitFor(FAREWELL_SECONDS, TimeUnit.SECONDS)) {
                process.destroyForcibly();
                return new Lost("sent the program something that it does not understand", cause);
            }
            return new Lost(Ending.of(process.exitValue(), orderly, killedByUs, heapMegabytes), cause);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return new Lost("was given up", e);
        }
    }
}
