package rakeline.command;

import picocli.CommandLine.Option;
import rakeline.quantity.Refusal;
import rakeline.rider.SaddleTarget.Setback;
import rakeline.study.fit.Wanted;

/** How a rider's contact points are held on bikes with other cranks. */
final class TargetOptions {
    @Option(
            names = "--setback",
            paramLabel = "FROM",
            description = "What keeps the saddle's setback on another crank: bb (default), pedal or line.")
    private String setback = Setback.BB.word();

    @Option(
            names = "--hands-from",
            paramLabel = "FROM",
            description = "What the hands are kept from on another crank: bb (default) or saddle.")
    private String handsFrom = "bb";

    @Option(names = "--own-cranks", description = "Leaves each bike its own cranks and pedals.")
    private boolean ownCranks;

    /**
     * The points as they are to be held on bikes under a rider: the rider's own shoe and crank go on every bike, else
     * those on which the points were found, but for what was set.
     *
     * @throws Refusal for a word that is not accepted
     */
    Wanted held(Wanted points, Riding riding) {
        Wanted worn = riding.rider().map(points::wornBy).orElse(points).leaving(riding.set());
        Wanted held = worn.holding(new Wanted.Hold(Setback.of(setback), handsWithSaddle()));
        return ownCranks ? held.onOwnCranks() : held;
    }

    private boolean handsWithSaddle() {
        if (!handsFrom.equals("bb") && !handsFrom.equals("saddle")) {
            throw new Refusal("--hands-from is " + handsFrom + "; accepted is bb or saddle.");
        }
        return handsFrom.equals("saddle");
    }
}
