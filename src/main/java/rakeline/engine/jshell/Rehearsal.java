package rakeline.engine.jshell;

import java.io.DataOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import rakeline.catalogue.ExampleBike;
import rakeline.engine.Packer;
import rakeline.engine.ResultCodec;
import rakeline.geometry.Bike;
import rakeline.prelude.Prelude;

/**
 * What most pages do: a bike is read, drawn, measured and swept, and what comes of it is packed. A worker that waits
 * does it once, so that the classes are loaded when a row of the page needs them; nothing of it is kept.
 */
final class Rehearsal {
    private Rehearsal() {}

    static void run() throws IOException {
        Bike bike = ExampleBike.read();
        pack(bike);
        pack(Prelude.measures(bike));
        pack(Prelude.sweep(bike)
                .over("frame.headAngleDeg", 70, 73)
                .track("trailMm", "toeRoomMm")
                .chart());
    }

    private static void pack(Object value) throws IOException {
        ResultCodec.write(new Packer(new DataOutputStream(OutputStream.nullOutputStream())), Showing.of(value));
    }
}
