package rakeline.engine;

/** How a row stands; one list for window, file and command line. */
public enum State {
    FRESH("fresh"),
    WAITING("waiting"),
    OUT_OF_DATE("out of date"),
    RUNNING("running"),
    FAILED("failed"),
    STOPPED("stopped"),
    NOT_RUN("not run");

    private final String words;

    State(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
