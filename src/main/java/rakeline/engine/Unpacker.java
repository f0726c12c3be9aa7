package rakeline.engine;

import java.io.DataInputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import rakeline.quantity.Numbers;

/** Reads what {@link Packer} wrote, from data held in memory; a length beyond that data is refused. */
public final class Unpacker {
    /** Reads one element of a list. */
    public interface Each<T> {
        T read(Unpacker in) throws IOException;
    }

    private final DataInputStream in;

    /** @param in whose {@code available} tells what is left */
    public Unpacker(DataInputStream in) {
        this.in = in;
    }

    public int number() throws IOException {
        return in.readInt();
    }

    public double real() throws IOException {
        return in.readDouble();
    }

    public boolean flag() throws IOException {
        return in.readBoolean();
    }

    public String text() throws IOException {
        return new String(bytes(), StandardCharsets.UTF_8);
    }

    public byte[] bytes() throws IOException {
        return in.readNBytes(length());
    }

    public List<String> texts() throws IOException {
        return list(Unpacker::text);
    }

    public <T> List<T> list(Each<T> each) throws IOException {
        int size = length();
        List<T> elements = new ArrayList<>();
        for (int i = 0; i < size; i++) {
            elements.add(each.read(this));
        }
        return elements;
    }

    /** A column of raw doubles. */
    public Numbers reals() throws IOException {
        ByteBuffer buffer = ByteBuffer.wrap(bytes());
        return Numbers.generate(buffer.limit() / Double.BYTES, i -> buffer.getDouble(i * Double.BYTES));
    }

    private int length() throws IOException {
        int length = in.readInt();
        if (length < 0 || length > in.available()) {
            throw new IOException("a length of " + length + " where " + in.available() + " bytes are left");
        }
        return length;
    }
}
