package rakeline.engine.jshell;

import java.util.List;
import java.util.Optional;
import rakeline.engine.Layout;

/** What a row threw, in plain words with the line in the row; Java's own message under it. */
final class Failures {
    private final Places places;
    private final Layout page;
    private final String rowId;

    Failures(Places places, Layout page, String rowId) {
        this.places = places;
        this.page = page;
        this.rowId = rowId;
    }

    /** A refusal's sentence as it is; else line, sentence and Java's message. */
    String sentence(Answer.Threw threw) {
        if (threw.refusal()) {
            return threw.message();
        }
        boolean silent = threw.message().equals("null");
        String java = silent ? threw.type() : threw.type() + ": " + threw.message();
        return where(threw.places()) + what(threw, silent) + "\n" + java;
    }

    private String where(List<Answer.Place> where) {
        Optional<Places.Spot> spot = places.find(where, rowId);
        return spot.map(found -> found.rowId().equals(rowId)
                        ? "Line " + found.line() + ": "
                        : "In " + page.called(found.rowId()) + ", line " + found.line() + ": ")
                .orElse("");
    }

    private static String what(Answer.Threw threw, boolean silent) {
        return switch (threw.type()) {
            case "java.lang.StackOverflowError" -> "the code calls itself without end, until the stack is full.";
            case "java.lang.OutOfMemoryError" -> "the code ran out of memory.";
            case "jdk.jshell.spi.SPIResolutionException" -> "the code uses a method or class that is not complete.";
            default -> silent ? "Java threw " + simple(threw.type()) + "." : ended(threw.message());
        };
    }

    private static String simple(String type) {
        return type.substring(type.lastIndexOf('.') + 1);
    }

    private static String ended(String message) {
        return message.matches("(?s).*[.!?]") ? message : message + ".";
    }
}
