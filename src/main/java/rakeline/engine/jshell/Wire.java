package rakeline.engine.jshell;

import java.io.BufferedInputStream;
import java.io.BufferedOutputStream;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.Closeable;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.net.Socket;
import java.util.Arrays;
import rakeline.engine.Packer;
import rakeline.engine.Unpacker;

/** One end of the connection between host and worker: frames of a kind, a length and that many bytes. */
final class Wire implements Closeable {
    /** The most that one frame may hold, in bytes. */
    static final int LARGEST = 64 << 20;

    private static final int BUFFER = 1 << 16;

    /** More is to be sent than one frame may hold. */
    static final class TooLarge extends IOException {
        private static final long serialVersionUID = 1L;

        private TooLarge(int bytes) {
            super("The result takes " + (bytes >> 20) + " MB; at most " + (LARGEST >> 20) + " MB are shown.");
        }
    }

    /** What a frame is for. */
    enum Kind {
        /** Worker: the secret it was given. */
        HELLO('h'),
        /** Host: do what most pages do, so that the first row is quick. */
        REHEARSE('o'),
        /** Host: folders in which files are found. */
        FOLDERS('f'),
        /** Host: classes. */
        LOAD('l'),
        /** Host: a row begins. */
        ROW('r'),
        /** Host: run a snippet; answered. */
        INVOKE('i'),
        /** Host: show a variable; answered. */
        SHOW('s'),
        /** Host: say what the row has left running; answered. */
        THREADS('n'),
        /** Host: forget a variable's value. */
        RELEASE('x'),
        /** Host: the value that a dial stands at. */
        DIAL('d'),
        /** Host: the path that a picker stands at. */
        PICK('p'),
        /** Host: paths of the bikes on the page's rack. */
        RACK('k'),
        /** Worker: text that a row prints. */
        PRINTED('t'),
        /** Worker: more was printed than is kept. */
        CUT('c'),
        /** Worker: a file that a row reads, as it stands. */
        READ('w'),
        /** Worker: what came of INVOKE or SHOW. */
        ANSWER('a'),
        /** Worker: it ends in an orderly way. */
        EXITING('e');

        private final int letter;

        Kind(int letter) {
            this.letter = letter;
        }

        private static Kind of(int letter) throws IOException {
            return Arrays.stream(values())
                    .filter(kind -> kind.letter == letter)
                    .findFirst()
                    .orElseThrow(() -> new IOException("no frame is of the kind " + letter));
        }
    }

    /** A frame as received. */
    static final class Frame {
        private final Kind kind;
        private final Unpacker body;

        private Frame(Kind kind, byte[] body) {
            this.kind = kind;
            this.body = new Unpacker(new DataInputStream(new ByteArrayInputStream(body)));
        }

        Kind kind() {
            return kind;
        }

        Unpacker body() {
            return body;
        }
    }

    /** Writes the inside of a frame. */
    interface Body {
        void write(Packer out) throws IOException;
    }

    private final Socket socket;
    private final DataInputStream in;
    private final DataOutputStream out;
    private final Object sending = new Object();

    Wire(Socket socket) throws IOException {
        this.socket = socket;
        socket.setTcpNoDelay(true);
        in = new DataInputStream(new BufferedInputStream(socket.getInputStream(), BUFFER));
        out = new DataOutputStream(new BufferedOutputStream(socket.getOutputStream(), BUFFER));
    }

    /**
     * Sends a frame.
     *
     * @throws TooLarge where it holds more than may be; nothing is sent then
     */
    void send(Kind kind, Body body) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        body.write(new Packer(new DataOutputStream(bytes)));
        if (bytes.size() > LARGEST) {
            throw new TooLarge(bytes.size());
        }
        synchronized (sending) {
            out.writeByte(kind.letter);
            out.writeInt(bytes.size());
            bytes.writeTo(out);
            out.flush();
        }
    }

    /**
     * Waits for a frame.
     *
     * @throws IOException at the end of the connection, or where what arrives is no frame
     */
    Frame receive() throws IOException {
        Kind kind = Kind.of(in.readUnsignedByte());
        int length = in.readInt();
        if (length < 0 || length > LARGEST) {
            throw new IOException("no frame has the length " + length);
        }
        byte[] body = in.readNBytes(length);
        if (body.length < length) {
            throw new IOException("the connection ended within a frame");
        }
        return new Frame(kind, body);
    }

    @Override
    public void close() throws IOException {
        socket.close();
    }
}
