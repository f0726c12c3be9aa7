package rakeline.engine.jshell;

import java.lang.reflect.Method;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import jdk.jshell.Diag;
import rakeline.engine.RowSource;
import rakeline.prelude.Prelude;
import rakeline.quantity.Nearest;

/** What the compiler says, in one plain sentence with line and column in the row; Java's own message under it. */
final class CompileErrors {
    private final RowSource row;
    private final Set<String> known;

    /** @param names in use on the page */
    CompileErrors(RowSource row, Set<String> names) {
        this.row = row;
        known = new TreeSet<>(names);
        Stream.concat(Prelude.FACADES.stream(), Stream.of(Math.class))
                .flatMap(type -> Arrays.stream(type.getMethods()))
                .map(Method::getName)
                .forEach(name -> known.add(name + "()"));
        Prelude.CONSTANTS.stream()
                .flatMap(type -> Arrays.stream(type.getFields()))
                .forEach(field -> known.add(field.getName()));
    }

    /** @param offset of the snippet in its row */
    String sentence(Diag diag, String snippet, int offset) {
        int start = (int) Math.max(0, diag.getStartPosition());
        int end = (int) Math.min(snippet.length(), Math.max(start, diag.getEndPosition()));
        String there = start <= end ? snippet.substring(start, end) : "";
        int place = offset + (int) Math.max(0, diag.getPosition());
        return "Line " + row.lineAt(place) + ", column " + row.columnAt(place) + ": " + words(diag, there) + "\n"
                + javasWords(diag);
    }

    /** Without the line that would name the class around the row, which has no name. */
    private static String javasWords(Diag diag) {
        return diag.getMessage(Locale.ROOT).replaceFirst("\\R *location: class *$", "");
    }

    /** @param names as JShell lists what a body lacks: {@code method h(int)}, {@code variable x} */
    String unknown(List<String> names, int offset) {
        String first = names.isEmpty() ? "" : names.get(0);
        String name = first.replaceFirst("^\\w+ ", "");
        return "Line " + row.lineAt(offset) + ": " + unknown(name, first.startsWith("method")) + "\ncannot find "
                + String.join(", ", names);
    }

    private String words(Diag diag, String there) {
        String code = diag.getCode().replace("compiler.err.", "");
        if (code.startsWith("cant.resolve")) {
            return unknown(there, code.contains("args"));
        }
        if (code.startsWith("expected")) {
            return "something is missing here, such as a semicolon, a bracket or a name.";
        }
        return switch (code) {
            case "premature.eof" -> "the row ends before this is complete; a bracket may be open.";
            case "unclosed.str.lit", "unclosed.char.lit", "unclosed.text.block" -> "the text is not closed by a quote.";
            case "unclosed.comment" -> "the comment is not closed.";
            case "prob.found.req" -> "a value of another type is needed here.";
            case "cant.apply.symbol", "cant.apply.symbols" -> "this cannot be called with these values.";
            case "var.might.not.have.been.initialized" -> "this variable has no value yet.";
            case "cant.assign.val.to.var", "cant.assign.val.to.final.var" -> "this value cannot be changed.";
            case "unreported.exception.need.to.catch.or.throw" -> "what may go wrong here must be caught.";
            case "operator.cant.be.applied", "operator.cant.be.applied.1" -> "these values cannot be combined so.";
            case "not.stmt", "illegal.start.of.expr", "illegal.start.of.type" -> "Java cannot read this here.";
            case "already.defined" -> "this name is declared twice.";
            case "invalid.canonical.constructor.in.record" ->
                "the record's constructor must fit its head; write it as public.";
            case "missing.ret.stmt" -> "the method can end without returning a value.";
            case "doesnt.exist" -> "there is no package " + there + ".";
            case "unreachable.stmt" -> "this can never be reached.";
            default -> "Java does not accept this.";
        };
    }

    private String unknown(String there, boolean isCall) {
        String name = there.substring(there.lastIndexOf('.') + 1)
                .replaceFirst("(?s)\\(.*", "")
                .strip();
        if (there.contains(".")) {
            return "there is no " + name + " in what stands before it.";
        }
        String hint = Nearest.hint(isCall ? name + "()" : name, known);
        return "nothing is called " + name + " here" + (hint.isEmpty() ? "." : hint);
    }
}
