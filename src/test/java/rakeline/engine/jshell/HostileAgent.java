package rakeline.engine.jshell;

import java.io.BufferedReader;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.ObjectOutputStream;
import java.net.InetAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** A worker that answers its host with a serialised object in place of a frame. */
final class HostileAgent {
    private HostileAgent() {}

    public static void main(String[] args) throws IOException {
        BufferedReader from = new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8));
        try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), Integer.parseInt(from.readLine()))) {
            String secret = from.readLine();
            Wire wire = new Wire(socket);
            wire.send(Wire.Kind.HELLO, out -> out.text(secret));
            awaitInvoke(wire);
            new ObjectOutputStream(new DataOutputStream(socket.getOutputStream()))
                    .writeObject(new ArrayList<>(List.of("evil")));
            socket.getInputStream().readAllBytes();
        }
    }

    private static void awaitInvoke(Wire wire) throws IOException {
        if (wire.receive().kind() != Wire.Kind.INVOKE) {
            awaitInvoke(wire);
        }
    }
}
