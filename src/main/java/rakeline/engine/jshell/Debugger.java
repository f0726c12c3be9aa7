package rakeline.engine.jshell;

import com.sun.jdi.ClassNotLoadedException;
import com.sun.jdi.ClassType;
import com.sun.jdi.IncompatibleThreadStateException;
import com.sun.jdi.InvalidTypeException;
import com.sun.jdi.ObjectReference;
import com.sun.jdi.ReferenceType;
import com.sun.jdi.ThreadReference;
import com.sun.jdi.VMDisconnectedException;
import com.sun.jdi.Value;
import com.sun.jdi.VirtualMachine;

/** The debugger's connection to a worker, for one thing: to throw a stop into the snippet that runs. */
final class Debugger {
    private final VirtualMachine machine;

    Debugger(VirtualMachine machine) {
        this.machine = machine;
    }

    /**
     * While all threads stand still, looks whether a snippet runs, and stops it unless it is just sending text or a class
     * is being initialised: one that is broken off there could not be used again in this process.
     */
    void stopSnippet() {
        try {
            machine.suspend();
            try {
                stopSuspended();
            } finally {
                machine.resume();
            }
        } catch (VMDisconnectedException e) {
            // The worker has ended, and so has its snippet: there is nothing left to stop.
            return;
        }
    }

    private void stopSuspended() {
        for (ReferenceType type : machine.classesByName(Stoppable.class.getName())) {
            if (value(type, "running") instanceof ThreadReference running && !initialises(running)) {
                announce((ClassType) type);
                stop(running);
            }
        }
    }

    private static boolean initialises(ThreadReference running) {
        try {
            return running.frames().stream()
                    .anyMatch(frame -> frame.location().method().isStaticInitializer());
        } catch (IncompatibleThreadStateException e) {
            throw notOurs(e);
        }
    }

    private void announce(ClassType stoppable) {
        try {
            stoppable.setValue(stoppable.fieldByName("thrown"), machine.mirrorOf(true));
        } catch (InvalidTypeException | ClassNotLoadedException e) {
            throw notOurs(e);
        }
    }

    private static void stop(ThreadReference running) {
        try {
            running.stop(
                    (ObjectReference) running.getValue(running.referenceType().fieldByName("halted")));
        } catch (InvalidTypeException e) {
            throw notOurs(e);
        }
    }

    private static IllegalStateException notOurs(Exception cause) {
        return new IllegalStateException("The worker's agent is not the one that belongs to this program.", cause);
    }

    private static Value value(ReferenceType type, String field) {
        return type.getValue(type.fieldByName(field));
    }
}
