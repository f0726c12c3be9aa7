package rakeline.command;

import java.util.Optional;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Option;
import rakeline.handling.Dynamics;
import rakeline.handling.Mount;
import rakeline.handling.Ride;

/** A linear bicycle: either the numbers of the model, or a bicycle from which they follow. */
final class LinearModel {
    @Option(
            names = "--parameters",
            required = true,
            paramLabel = "FILE",
            description = "The model's own 25 numbers (*.dynamics.json).")
    private String parameters;

    @ArgGroup(exclusive = false)
    private Subject subject;

    /**
     * The model with its masses.
     *
     * @param mount what was weighed for it; none where the numbers were given
     */
    record Weighed(Dynamics dynamics, Optional<Mount> mount) {}

    /**
     * Reads it.
     *
     * @throws rakeline.quantity.Refusal for a file or an option that is not accepted
     */
    Weighed read() {
        if (subject == null) {
            return new Weighed(Paths.dynamics(parameters), Optional.empty());
        }
        Ride ride = subject.ride();
        return new Weighed(Dynamics.of(ride), Optional.of(ride.mount()));
    }
}
