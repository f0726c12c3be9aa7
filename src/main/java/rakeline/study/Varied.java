package rakeline.study;

import rakeline.geometry.Setting;

/** A number that varies, and the way in which the bike follows it. */
public record Varied(Setting setting, Mode mode) {
    /** In the way that is usual for it. */
    public static Varied of(Setting setting) {
        return new Varied(setting, Mode.usualFor(setting));
    }

    public String key() {
        return setting.key();
    }
}
