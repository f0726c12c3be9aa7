package rakeline.geometry;

import java.util.HashMap;
import java.util.Map;
import java.util.Random;
import java.util.stream.LongStream;

/** Made-up bikes with every group, the same for the same seed; unequal wheels, reversed forks and offset seat tubes too. */
final class RandomBikes {
    private final Random random;
    private final Map<String, Double> numbers = new HashMap<>();

    private RandomBikes(long seed) {
        this.random = new Random(seed * 104_729 + 11);
    }

    static LongStream seeds(int count) {
        return LongStream.range(0, count);
    }

    static Bike seeded(long seed) {
        return new RandomBikes(seed).bike();
    }

    private Bike bike() {
        frame();
        fork();
        wheels();
        foot();
        cockpit();
        saddle();
        return Bikes.redrawn(Bikes.whole(), numbers);
    }

    private void frame() {
        put("frame.stackMm", 400, 620);
        put("frame.reachMm", 340, 480);
        put("frame.headAngleDeg", 63, 76);
        put("frame.seatAngleDeg", 70, 78);
        put("frame.seatAngleAtMm", 400, 700);
        put("frame.seatTubeAngleDeg", 66, 78);
        put("frame.chainstayMm", 390, 480);
        put("frame.bbDropMm", -30, 90);
        put("frame.headTubeMm", 110, 190);
        put("frame.seatTubeMm", 380, 520);
        put("frame.seatTubeDepthMm", 200, 400);
        put("frame.straddleXMm", 60, 160);
        put("frame.topTube.headJunctionMm", 20, 60);
        put("frame.topTube.seatJunctionMm", 330, 480);
        put("frame.topTube.diameterMm", 25, 50);
    }

    private void fork() {
        put("fork.offsetMm", -60, 70);
        put("fork.axleToCrownMm", 360, 480);
        put("fork.lowerStackMm", 0, 15);
        put("fork.sagMm", 0, 30);
        put("fork.steererLengthMm", 170, 300);
        put("fork.spacerLimitMm", 20, 50);
    }

    private void wheels() {
        put("wheels.front.tyreMm", 20, 60);
        put("wheels.front.radiusMm", 260, 360);
        put("wheels.front.mudguardGapMm", 0, 20);
        put("wheels.rear.tyreMm", 20, 60);
        put("wheels.rear.radiusMm", 260, 360);
    }

    private void foot() {
        put("crank.lengthMm", 150, 180);
        put("crank.stanceWidthMm", 210, 300);
        put("crank.pedalHalfThicknessMm", 6, 15);
        put("crank.pedalHalfWidthMm", 30, 55);
        put("shoe.toeForwardMm", 80, 130);
        put("shoe.toeHeightMm", 15, 45);
        put("shoe.toeRadiusMm", 15, 35);
        put("shoe.toeHalfWidthMm", 10, 40);
        put("shoe.toeOutDeg", -10, 10);
        put("shoe.pitchDeg", -10, 20);
    }

    private void cockpit() {
        put("cockpit.headsetCoverMm", 5, 20);
        put("cockpit.spacersMm", 0, 40);
        put("cockpit.stemClampHeightMm", 35, 45);
        put("cockpit.stemLengthMm", 50, 130);
        put("cockpit.stemAngleDeg", -20, 30);
        put("cockpit.bar.widthMm", 350, 700);
        put("cockpit.bar.hoodForwardMm", -50, 120);
        put("cockpit.bar.hoodRiseMm", -30, 60);
        put("cockpit.bar.reachMm", 60, 90);
        put("cockpit.bar.dropMm", 100, 150);
        put("cockpit.bar.topsHalfWidthMm", 80, 140);
    }

    private void saddle() {
        put("contact.sitXMm", -280, -120);
        put("contact.sitYMm", 550, 750);
        put("contact.handXMm", 400, 600);
        put("contact.handYMm", 500, 750);
        put("seatpost.setbackMm", -10, 30);
        put("seatpost.lengthMm", 250, 400);
        put("seatpost.minimumInsertionMm", 60, 120);
        put("saddle.railTravelMm", 20, 60);
        put("saddle.sitBehindRailsMm", -20, 60);
        put("saddle.railToTopMm", 35, 60);
        put("ride.steerDeg", 1, 60);
        put("ride.leanDeg", 2, 25);
    }

    private void put(String key, double from, double to) {
        numbers.put(key, from + (to - from) * random.nextDouble());
    }
}
