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
import java.util.List;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.Callable;
import rakeline.catalogue.Roots;
import rakeline.engine.Packer;
import rakeline.engine.Result;
import rakeline.engine.Unpacker;
import rakeline.quantity.Refusal;

/** Where snippets run, in the worker: one thread takes what the host asks in turn. */
final class Bench {
    private final Wire wire;
    private final WorkerSurroundings surroundings;
    private final SnippetLoader loader = new SnippetLoader();
    private final RowThreads threads;
    private final PrintedFrames printed;

    Bench(Wire wire, WorkerSurroundings surroundings, RowThreads threads) {
        this.wire = wire;
        this.surroundings = surroundings;
        this.threads = threads;
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

    private void serve(Wire.Frame frame) throws IOException {
        Unpacker in = frame.body();
        switch (frame.kind()) {
            case FOLDERS ->
                surroundings.readFrom(
                        folders(in), in.flag() ? Roots.Links.FOLLOWED : Roots.Links.REFUSED, this::reading);
            case REHEARSE -> rehearse();
            case LOAD -> in.list(from -> loader.add(from.text(), from.bytes()));
            case ROW -> beginRow();
            case DIAL -> surroundings.setDial(in.text(), in.real());
            case PICK -> surroundings.setPick(in.text(), in.text());
            case RACK -> surroundings.setRack(in.texts());
            case RELEASE -> release(in.text(), in.text());
            case INVOKE -> invoke(in.text(), in.text(), in.text(), in.flag());
            case THREADS -> wire.send(Wire.Kind.ANSWER, out -> answer(out, new Answer.Stopped(), threads.settled()));
            case SHOW -> show(in.text(), in.text());
            default -> throw new IOException("a worker is not asked for " + frame.kind());
        }
    }

    /** A rehearsal that comes to nothing costs no more than the time it would have spared. */
    private static void rehearse() {
        attempt(() -> {
            Rehearsal.run();
            return new Answer.Stopped();
        });
    }

    private static List<Path> folders(Unpacker in) throws IOException {
        return in.texts().stream().map(Path::of).toList();
    }

    private void reading(Path file) {
        try {
            Stoppable.unstopped(() -> wire.send(Wire.Kind.READ, Stamp.of(file)::write));
        } catch (IOException e) {
            Runtime.getRuntime().halt(0);
        }
    }

    private void beginRow() {
        threads.beginRow();
        printed.begin();
        OwnText own = new OwnText(new BufferedOutputStream(printed), threads);
        PrintStream out = new PrintStream(own, true, StandardCharsets.UTF_8);
        System.setOut(out);
        System.setErr(out);
    }

    private void invoke(String className, String methodName, String control, boolean shown) throws IOException {
        surroundings.declaring(control);
        printed.open();
        Answer answer = attempt(() -> {
            Method method = loader.loadClass(className).getDeclaredMethod(methodName);
            method.setAccessible(true);
            Object value = method.invoke(null);
            boolean isVoid = method.getReturnType() == void.class;
            return done(shown && !isVoid ? Optional.of(Showing.of(value)) : Optional.empty(), value);
        });
        answer(answer instanceof Answer.Threw threw ? threw.over(surroundings.declared()) : answer);
    }

    private Answer.Done done(Optional<Result> result, Object value) {
        double number = value instanceof Number plain ? plain.doubleValue() : Double.NaN;
        return done(result, Showing.canChange(value), number);
    }

    private Answer.Done done(Optional<Result> result, boolean changing, double number) {
        return new Answer.Done(result, changing, surroundings.declared(), surroundings.notice(), number);
    }

    private void show(String className, String name) throws IOException {
        printed.open();
        answer(attempt(() -> done(Optional.of(Showing.of(field(className, name).get(null))), true, Double.NaN)));
    }

    private void answer(Answer answer) throws IOException {
        System.out.flush();
        printed.end();
        RowThreads.Running running = threads.now();
        try {
            wire.send(Wire.Kind.ANSWER, out -> answer(out, answer, running));
        } catch (Wire.TooLarge e) {
            Answer refusal =
                    new Answer.Threw(Refusal.class.getName(), e.getMessage(), true, List.of(), Optional.empty());
            wire.send(Wire.Kind.ANSWER, out -> answer(out, refusal, running));
        }
    }

    private static void answer(Packer out, Answer answer, RowThreads.Running running) throws IOException {
        out.number(running.left()).number(running.all());
        answer.write(out);
    }

    private static Answer attempt(Callable<Answer> work) {
        return Stoppable.run(() -> came(work), new Answer.Stopped());
    }

    private static Answer came(Callable<Answer> work) {
        try {
            return work.call();
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
