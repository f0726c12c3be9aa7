package rakeline.engine.jshell;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.function.UnaryOperator;

/** A compiled class and the names in it; source: The Java Virtual Machine Specification, Java SE 17, 4.1 and 4.4. */
final class ClassFile {
    private static final int HEADER_BYTES = 8;
    private static final int TEXT = 1;

    private final DataInputStream in;
    private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    private final DataOutputStream out = new DataOutputStream(bytes);
    private final UnaryOperator<String> renaming;

    private ClassFile(byte[] compiled, UnaryOperator<String> renaming) {
        this.in = new DataInputStream(new ByteArrayInputStream(compiled));
        this.renaming = renaming;
    }

    /**
     * The class with every text of its constant pool renamed: names of classes, descriptors and signatures, with the
     * texts that rows write.
     *
     * @throws IllegalArgumentException where this is no class file, or one of a kind not known here
     */
    static byte[] renamed(byte[] compiled, UnaryOperator<String> renaming) {
        try {
            return new ClassFile(compiled, renaming).copy();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private byte[] copy() throws IOException {
        out.write(in.readNBytes(HEADER_BYTES));
        int count = in.readUnsignedShort();
        out.writeShort(count);
        for (int i = 1; i < count; ) {
            i += copyConstant(in.readUnsignedByte());
        }
        in.transferTo(out);
        return bytes.toByteArray();
    }

    /** Copies a constant, and tells how many places it takes in the pool. */
    private int copyConstant(int tag) throws IOException {
        out.writeByte(tag);
        if (tag == TEXT) {
            out.writeUTF(renaming.apply(in.readUTF()));
        } else {
            out.write(in.readNBytes(size(tag)));
        }
        return tag == 5 || tag == 6 ? 2 : 1;
    }

    private static int size(int tag) {
        return switch (tag) {
            case 7, 8, 16, 19, 20 -> 2;
            case 15 -> 3;
            case 3, 4, 9, 10, 11, 12, 17, 18 -> 4;
            case 5, 6 -> 8;
            default -> throw new IllegalArgumentException("a class file has no constant of kind " + tag);
        };
    }
}
