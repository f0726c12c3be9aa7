package rakeline.engine.jshell;

import java.io.IOException;
import java.io.OutputStream;

/** Text of the present row alone: what threads print that rows before it have left running is dropped. */
final class OwnText extends OutputStream {
    private final OutputStream out;
    private final RowThreads threads;

    OwnText(OutputStream out, RowThreads threads) {
        this.out = out;
        this.threads = threads;
    }

    @Override
    public void write(int b) throws IOException {
        write(new byte[] {(byte) b}, 0, 1);
    }

    @Override
    public void write(byte[] bytes, int from, int length) throws IOException {
        if (!threads.isEarlier(Thread.currentThread())) {
            out.write(bytes, from, length);
        }
    }

    @Override
    public void flush() throws IOException {
        out.flush();
    }
}
