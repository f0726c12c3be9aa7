package rakeline.broken.rider;

import rakeline.broken.study.Sweep;

/** Part of the house in which every rule is broken. */
public record KnowsStudy(Sweep sweep) {}
