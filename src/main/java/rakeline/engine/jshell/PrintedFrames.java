package rakeline.engine.jshell;

import java.io.IOException;
import java.io.OutputStream;
import java.util.Arrays;

/**
 * What a row prints, sent to the host as it comes, up to a bound; the rest is left out, and so is what is printed while
 * no row runs: it would be taken for another row's.
 */
final class PrintedFrames extends OutputStream {
    /** Bytes kept of what one row prints. */
    static final int KEPT = 64 * 1024;

    private final Wire wire;
    private int left = KEPT;
    private boolean cut;
    private boolean open;

    PrintedFrames(Wire wire) {
        this.wire = wire;
    }

    synchronized void begin() {
        left = KEPT;
        cut = false;
    }

    /** A snippet of the row is about to run. */
    synchronized void open() {
        open = true;
    }

    /** The snippet has ended. */
    synchronized void end() {
        open = false;
    }

    @Override
    public void write(int b) throws IOException {
        write(new byte[] {(byte) b}, 0, 1);
    }

    @Override
    public synchronized void write(byte[] bytes, int from, int length) throws IOException {
        if (open && !cut) {
            Stoppable.unstopped(() -> send(bytes, from, length));
        }
    }

    private void send(byte[] bytes, int from, int length) throws IOException {
        int size = Math.min(left, length);
        if (size > 0) {
            byte[] kept = Arrays.copyOfRange(bytes, from, from + size);
            wire.send(Wire.Kind.PRINTED, out -> out.bytes(kept));
            left -= size;
        }
        if (size < length) {
            cut = true;
            wire.send(Wire.Kind.CUT, out -> {});
        }
    }
}
