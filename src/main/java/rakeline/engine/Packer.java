package rakeline.engine;

import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.List;
import rakeline.quantity.Numbers;

/** Writes lengths, words and numbers; {@link Unpacker} reads them. */
public final class Packer {
    /** Writes one element of a list. */
    public interface Each<T> {
        void write(Packer out, T element) throws IOException;
    }

    private final DataOutputStream out;

    public Packer(DataOutputStream out) {
        this.out = out;
    }

    public Packer number(int value) throws IOException {
        out.writeInt(value);
        return this;
    }

    public Packer real(double value) throws IOException {
        out.writeDouble(value);
        return this;
    }

    public Packer flag(boolean value) throws IOException {
        out.writeBoolean(value);
        return this;
    }

    public Packer text(String value) throws IOException {
        return bytes(value.getBytes(StandardCharsets.UTF_8));
    }

    public Packer bytes(byte[] value) throws IOException {
        out.writeInt(value.length);
        out.write(value);
        return this;
    }

    public Packer texts(List<String> values) throws IOException {
        return list(values, Packer::text);
    }

    public <T> Packer list(List<T> elements, Each<? super T> each) throws IOException {
        out.writeInt(elements.size());
        for (T element : elements) {
            each.write(this, element);
        }
        return this;
    }

    /** A column as raw doubles. */
    public Packer reals(Numbers values) throws IOException {
        ByteBuffer buffer = ByteBuffer.allocate(values.size() * Double.BYTES);
        values.stream().forEach(buffer::putDouble);
        return bytes(buffer.array());
    }
}
