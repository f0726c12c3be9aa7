package rakeline.engine.jshell;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.lang.reflect.Field;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.Callable;
import rakeline.engine.Result;
import rakeline.engine.Unpacker;

/** Where snippets run, in the worker: one thread takes what the host asks in turn. */
final class Bench {
    /** The thread that may be stopped now, else null; the host reads it through the debugger, by this name. */
    private static volatile Thread running;

    /** Work that must not be broken off. */
    interface Whole {
        void go() throws IOException;
    }

    private final Wire wire;
    private final WorkerSurroundings surroundings;
    private final SnippetLoader loader = new SnippetLoader();
    private final PrintedFrames printed;

    Bench(Wire wire, WorkerSurroundings surroundings) {
        this.wire = wire;
        this.surroundings = surroundings;
        this.printed = new PrintedFrames(wire);
        beginRow();
    }

    /** Does what is asked until the process ends. */
    void work(BlockingQueue<Wire.Frame> asked) {
        Thread.currentThread().setContextClassLoader(loader);
        try {
            while (true) {
                serve(next(asked));
            }
        } catch (IOException e) {
            Runtime.getRuntime().halt(0);
        }
    }

    /** An interruption that a row has left behind concerns that row alone. */
    private static Wire.Frame next(BlockingQueue<Wire.Frame> asked) {
        try {
            return asked.take();
        } catch (InterruptedException e) {
            return next(asked);
        }
    }

    /** Does something whole: the host does not stop it half way. */
    static void unstopped(Whole work) throws IOException {
        Thread before = running;
        if (before != Thread.currentThread()) {
            work.go();
            return;
        }
        running = null;
        try {
            work.go();
        } finally {
            running = before;
        }
    }

    private void serve(Wire.Frame frame) throws IOException {
        Unpacker in = frame.body();
        switch (frame.kind()) {
            case FOLDERS ->
                surroundings.readFrom(in.texts().stream().map(Path::of).toList(), this::reading);
            case LOAD -> in.list(from -> loader.add(from.text(), from.bytes()));
            case ROW -> beginRow();
            case DIAL -> surroundings.setDial(in.text(), in.real());
            case PICK -> surroundings.setPick(in.text(), in.text());
            case RACK -> surroundings.setRack(in.texts());
            case RELEASE -> release(in.text(), in.text());
            case INVOKE -> invoke(in.text(), in.text(), in.text(), in.flag());
            case SHOW -> show(in.text(), in.text());
            default -> throw new IOException("a worker is not asked for " + frame.kind());
        }
    }

    private void reading(Path file) {
        try {
            unstopped(() -> wire.send(Wire.Kind.READ, Stamp.of(file)::write));
        } catch (IOException e) {
            Runtime.getRuntime().halt(0);
        }
    }

    private void beginRow() {
        printed.begin();
        PrintStream out = new PrintStream(new BufferedOutputStream(printed), true, StandardCharsets.UTF_8);
        System.setOut(out);
        System.setErr(out);
    }

    private void invoke(String className, String methodName, String control, boolean shown) throws IOException {
        surroundings.declaring(control);
        Answer answer = attempt(() -> {
            Method method = loader.loadClass(className).getDeclaredMethod(methodName);
            method.setAccessible(true);
            Object value = method.invoke(null);
            boolean isVoid = method.getReturnType() == void.class;
            return done(shown && !isVoid ? Optional.of(Showing.of(value)) : Optional.empty(), value);
        });
        answer(answer);
    }

    private Answer.Done done(Optional<Result> result, Object value) {
        double number = value instanceof Number plain ? plain.doubleValue() : Double.NaN;
        return done(result, Showing.canChange(value), number);
    }

    private Answer.Done done(Optional<Result> result, boolean changing, double number) {
        return new Answer.Done(result, changing, surroundings.declared(), surroundings.notice(), number);
    }

    private void show(String className, String name) throws IOException {
        answer(attempt(() -> done(Optional.of(Showing.of(field(className, name).get(null))), true, Double.NaN)));
    }

    private void answer(Answer answer) throws IOException {
        running = null;
        System.out.flush();
        wire.send(Wire.Kind.ANSWER, answer::write);
    }

    private static Answer attempt(Callable<Answer> work) {
        try {
            try {
                running = Thread.currentThread();
                return work.call();
            } finally {
                running = null;
            }
        } catch (InvocationTargetException e) {
            return Thrown.answer(e.getCause());
        } catch (Throwable e) {
            return Thrown.answer(e);
        }
    }

    private Field field(String className, String name) throws ReflectiveOperationException {
        Field field = loader.loadClass(className).getDeclaredField(name);
        field.setAccessible(true);
        return field;
    }

    /** Lets go of what a variable holds, once its row is gone. */
    private void release(String className, String name) {
        attempt(() -> {
            Field field = field(className, name);
            if (!field.getType().isPrimitive() && !Modifier.isFinal(field.getModifiers())) {
                field.set(null, null);
            }
            return new Answer.Stopped();
        });
    }
}
