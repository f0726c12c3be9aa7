package rakeline.engine.jshell;

import com.sun.jdi.InvalidTypeException;
import com.sun.jdi.ObjectReference;
import com.sun.jdi.ReferenceType;
import com.sun.jdi.ThreadReference;
import com.sun.jdi.VMDisconnectedException;
import com.sun.jdi.Value;
import com.sun.jdi.VirtualMachine;
import java.util.List;

/** The debugger's connection to a worker, for one thing: to throw a stop into the snippet that runs. */
final class Debugger {
    private final VirtualMachine machine;

    Debugger(VirtualMachine machine) {
        this.machine = machine;
    }

    /** While all threads stand still, looks whether a snippet runs, and stops it unless it is just sending text. */
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
        List<ReferenceType> types = machine.classesByName(Bench.class.getName());
        if (!types.isEmpty() && value(types.get(0), "running") instanceof ThreadReference running) {
            stop(running);
        }
    }

    private static void stop(ThreadReference running) {
        try {
            running.stop(
                    (ObjectReference) running.getValue(running.referenceType().fieldByName("halted")));
        } catch (InvalidTypeException e) {
            throw new IllegalStateException("The worker's agent is not the one that belongs to this program.", e);
        }
    }

    private static Value value(ReferenceType type, String field) {
        return type.getValue(type.fieldByName(field));
    }
}
