package rakeline.benchmark;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.infra.Blackhole;
import rakeline.geometry.Bike;
import rakeline.geometry.Cockpit;
import rakeline.geometry.HandPoint;
import rakeline.geometry.Hands;
import rakeline.geometry.SideView;

/** Side view, cockpit and hands of one bike, beside the same arithmetic written inline. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Fork(2)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
public class SideViewBenchmark {
    private final Bike bike = DemoBikes.read("road-m");
    private final double stack = bike.get("frame.stackMm");
    private final double reach = bike.get("frame.reachMm");
    private final double headAngle = bike.get("frame.headAngleDeg");
    private final double drop = bike.get("frame.bbDropMm");
    private final double chainstay = bike.get("frame.chainstayMm");
    private final double offset = bike.get("fork.offsetMm");
    private final double frontRadius = bike.get("wheels.front.radiusMm");
    private final double rearRadius = bike.get("wheels.rear.radiusMm");
    private final double cover = bike.get("cockpit.headsetCoverMm");
    private final double spacers = bike.get("cockpit.spacersMm");
    private final double clampHeight = bike.get("cockpit.stemClampHeightMm");
    private final double stemLength = bike.get("cockpit.stemLengthMm");
    private final double stemAngle = bike.get("cockpit.stemAngleDeg");
    private final double barWidth = bike.get("cockpit.bar.widthMm");
    private final double hoodForward = bike.get("cockpit.bar.hoodForwardMm");
    private final double hoodRise = bike.get("cockpit.bar.hoodRiseMm");

    @Benchmark
    public void library(Blackhole hole) {
        SideView side = SideView.of(bike);
        Cockpit cockpit = Cockpit.of(bike, side);
        HandPoint hand = HandPoint.of(bike, side, cockpit, Hands.HOODS);
        hole.consume(side.trailMm());
        hole.consume(side.wheelbaseMm());
        hole.consume(side.frontCentreMm());
        hole.consume(cockpit.clamp().x());
        hole.consume(cockpit.clamp().y());
        hole.consume(hand.at().x());
        hole.consume(hand.at().y());
        hole.consume(hand.leverMm());
    }

    @Benchmark
    public void inline(Blackhole hole) {
        double sin = Math.sin(Math.toRadians(headAngle));
        double cos = Math.cos(Math.toRadians(headAngle));
        double bbHeight = rearRadius - drop;
        double axleY = frontRadius - bbHeight;
        double axleX = reach + offset * sin + (stack + offset * cos - axleY) / sin * cos;
        hole.consume((frontRadius * cos - offset) / sin);
        hole.consume(axleX + Math.sqrt(chainstay * chainstay - drop * drop));
        hole.consume(Math.sqrt(axleX * axleX + axleY * axleY));
        double up = cover + spacers + clampHeight / 2;
        double ahead = stemLength * Math.cos(Math.toRadians(stemAngle));
        double rise = stemLength * Math.sin(Math.toRadians(stemAngle));
        double barX = reach - up * cos + ahead * sin - rise * cos;
        double barY = stack + up * sin + ahead * cos + rise * sin;
        hole.consume(barX);
        hole.consume(barY);
        double handX = barX + hoodForward;
        double handY = barY + hoodRise;
        hole.consume(handX);
        hole.consume(handY);
        hole.consume(Math.hypot((handX - reach) * sin + (handY - stack) * cos, barWidth / 2));
    }
}
