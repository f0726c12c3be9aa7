package rakeline.worksheet;

import java.util.regex.Pattern;
import javax.lang.model.SourceVersion;
import rakeline.json.Quote;
import rakeline.quantity.Decimals;
import rakeline.quantity.Refusal;

/** Names in a worksheet: those of variables, which dials and picks go by, and the numbered ids of rows. */
final class Names {
    private static final Pattern NUMBERED = Pattern.compile("r[0-9]{1,8}");

    private static final Pattern ID = Pattern.compile("[A-Za-z0-9_-]{1,40}");

    private Names() {}

    static void checkId(String id) {
        if (!ID.matcher(id).matches()) {
            throw new Refusal(
                    "the row id \"" + Quote.of(id) + "\" is not one; accepted are up to 40 of A-Z, a-z, 0-9, - and _.");
        }
    }

    static void checkDial(String name, double value) {
        checked(name);
        if (!Double.isFinite(value)) {
            throw new Refusal(
                    "the dial " + name + " is " + Decimals.shortest(value) + "; accepted is a finite number.");
        }
    }

    static String checked(String name) {
        if (!SourceVersion.isIdentifier(name) || SourceVersion.isKeyword(name, SourceVersion.RELEASE_17)) {
            throw new Refusal(
                    "\"" + Quote.of(name) + "\" is not a variable's name; dials and picks go by their variable.");
        }
        return name;
    }

    /** The number in {@code r12}; 0 for an id of another form. */
    static int number(String id) {
        return NUMBERED.matcher(id).matches() ? Integer.parseInt(id.substring(1)) : 0;
    }
}
