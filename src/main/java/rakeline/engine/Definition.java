package rakeline.engine;

/**
 * A name that a row gives to the rows below it.
 *
 * @param name as it is used
 * @param signature the name, for a method with its parameter types: what may be declared only once on a page
 * @param keepsState true: a class with static fields that can change
 */
public record Definition(Kind kind, String name, String signature, boolean keepsState) {
    /** What is named. */
    public enum Kind {
        VARIABLE,
        METHOD,
        TYPE,
        IMPORT
    }

    public static Definition variable(String name) {
        return new Definition(Kind.VARIABLE, name, name, false);
    }

    public static Definition method(String name, String parameterTypes) {
        return new Definition(Kind.METHOD, name, name + "(" + parameterTypes + ")", false);
    }

    public static Definition type(String name, boolean keepsState) {
        return new Definition(Kind.TYPE, name, name, keepsState);
    }

    public static Definition imported(String name) {
        return new Definition(Kind.IMPORT, name, name, false);
    }

    /** How a use of it is written in {@link SnippetSource#uses()}: methods apart from all else. */
    public String use() {
        return kind == Kind.METHOD ? name + "()" : name;
    }

    /** Whether its body runs where it is used rather than where it stands. */
    public boolean isDeferred() {
        return kind == Kind.METHOD || kind == Kind.TYPE;
    }
}
