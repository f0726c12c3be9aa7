package rakeline.engine.jshell;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import rakeline.engine.Session;

/** A program that runs one row, prints its value and waits to be ended. */
final class HostOfOneRow {
    private HostOfOneRow() {}

    public static void main(String[] args) throws InterruptedException, IOException {
        Running page = new Running(Session.Settings.standard().withoutStandby());
        new PrintStream(System.out, true, StandardCharsets.UTF_8)
                .println(page.run(args[0]).value("r1"));
        System.in.read();
        page.close();
    }
}
