package rakeline.desk;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Proxy;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.locks.LockSupport;
import rakeline.worksheet.Row;
import rakeline.worksheet.Worksheet;

/**
 * A program that edits and saves a page until it is killed, through the journal and the saving that the window uses. It
 * prints a line for each edit, {@code edit NUMBER TIME}, the time in milliseconds when it was made, and two for each thing
 * that the disk does, {@code begin NUMBER TIME} and {@code end NUMBER TIME}.
 */
final class EditingProcess {
    private static final AtomicInteger ASKED = new AtomicInteger();

    private final Random random;
    private final Journal journal;
    private final Saving saving;
    private PageFile stored;
    private Worksheet page;

    private EditingProcess(Path home, Path file, long seed) {
        Places places = Places.in(home);
        SafeFile disk = new SafeFile(timed(new Disk()));
        random = new Random(seed);
        journal = new Journal(disk, places, trouble -> {
            if (!trouble.isEmpty()) {
                throw new IllegalStateException(trouble);
            }
        });
        saving = new Saving(disk, new Backups(disk, places), Clock.systemUTC()::instant);
        stored = PageFile.open(disk, file);
        page = stored.page();
    }

    public static void main(String[] args) {
        new EditingProcess(Path.of(args[0]), Path.of(args[1]), Long.parseLong(args[2])).editForEver();
    }

    /** A pause between edits and what an edit is are drawn; a save follows one in twenty. */
    private void editForEver() {
        for (int number = 1; true; number++) {
            page = edited(number);
            journal.keep(new Draft(
                    page, Optional.of(stored.file()), true, Clock.systemUTC().instant()));
            say("edit", number);
            if (random.nextInt(20) == 0) {
                save();
            }
            LockSupport.parkNanos(random.nextInt(40_000_000));
        }
    }

    private Worksheet edited(int number) {
        Worksheet counted = page.withDial("edit", number);
        return switch (random.nextInt(3)) {
            case 0 ->
                counted.rows().size() < 200
                        ? counted.insert(
                                random.nextInt(counted.rows().size() + 1),
                                Row.Snippet.of(counted.freshId(), "double x" + number + " = " + number + ";"))
                        : counted;
            case 1 -> counted.rows().size() > 1 ? counted.without(randomId(counted)) : counted;
            default -> counted.withText(randomId(counted), "text ".repeat(random.nextInt(500)) + number);
        };
    }

    private String randomId(Worksheet of) {
        return of.rows().get(random.nextInt(of.rows().size())).id();
    }

    private void save() {
        if (saving.save(stored, page) instanceof Saving.Saved saved) {
            stored = saved.stored();
            journal.forget();
        } else {
            throw new IllegalStateException("nobody else changes this file");
        }
    }

    private static FileLayer timed(FileLayer disk) {
        return (FileLayer) Proxy.newProxyInstance(
                FileLayer.class.getClassLoader(),
                new Class<?>[] {FileLayer.class},
                (proxy, method, arguments) -> timed(disk, method, arguments));
    }

    private static Object timed(FileLayer disk, Method method, Object[] arguments) throws Throwable {
        int number = ASKED.incrementAndGet();
        say("begin", number);
        try {
            return method.invoke(disk, arguments);
        } catch (InvocationTargetException e) {
            throw e.getCause();
        } finally {
            say("end", number);
        }
    }

    private static synchronized void say(String what, int number) {
        System.out.print(what + " " + number + " " + System.currentTimeMillis() + "\n");
        System.out.flush();
    }
}
