package rakeline.engine.jshell;

import com.sun.source.tree.BlockTree;
import com.sun.source.tree.ClassTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.ExpressionTree;
import com.sun.source.tree.IdentifierTree;
import com.sun.source.tree.ImportTree;
import com.sun.source.tree.LiteralTree;
import com.sun.source.tree.MemberSelectTree;
import com.sun.source.tree.MethodInvocationTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.Tree;
import com.sun.source.tree.UnaryTree;
import com.sun.source.tree.VariableTree;
import com.sun.source.util.SourcePositions;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import javax.lang.model.element.Modifier;
import rakeline.engine.Definition;
import rakeline.engine.RowSource;
import rakeline.engine.SnippetSource;

/** Reads one parsed snippet: what it defines, uses and assigns, and the dial or picker that it declares. */
final class SnippetReader {
    private static final Set<String> CONTROLS = Set.of("dial", "pick");

    /** Label, unit, ends, step, initial value; a bound dial has fewer. */
    private static final int FREE_DIAL_ARGUMENTS = 6;

    private final String rowText;
    private final int offset;
    private final SourceReader.Wrapped wrapped;
    private final CompilationUnitTree unit;
    private final SourcePositions positions;

    SnippetReader(String rowText, SourceReader.Wrapped wrapped, CompilationUnitTree unit, SourcePositions positions) {
        this.positions = positions;
        this.rowText = rowText;
        this.offset = wrapped.offset();
        this.wrapped = wrapped;
        this.unit = unit;
    }

    SnippetSource read() {
        List<Tree> top = topLevel();
        NameScan scan = new NameScan();
        top.forEach(scan::scanTop);
        Optional<SnippetSource.Declared> control = top.size() == 1 ? control(top.get(0)) : Optional.empty();
        return new SnippetSource(
                offset,
                wrapped.text(),
                defines(top),
                scan.uses(),
                scan.assigns(),
                control,
                fault(scan, control)
                        .or(() -> top.stream()
                                .flatMap(tree -> circular(tree).stream())
                                .findFirst()),
                true);
    }

    private List<Tree> topLevel() {
        if (wrapped.wrapping() == SourceReader.Wrapping.IMPORT) {
            return List.copyOf(unit.getImports());
        }
        ClassTree outer = (ClassTree) unit.getTypeDecls().get(0);
        return switch (wrapped.wrapping()) {
            case STATEMENT -> List.copyOf(body(outer).getStatements());
            case EXPRESSION -> List.of(((VariableTree) outer.getMembers().get(0)).getInitializer());
            default -> List.copyOf(outer.getMembers());
        };
    }

    private static BlockTree body(ClassTree outer) {
        return ((MethodTree) outer.getMembers().get(0)).getBody();
    }

    private static List<Definition> defines(List<Tree> top) {
        List<Definition> found = new ArrayList<>();
        for (Tree tree : top) {
            define(tree).ifPresent(found::add);
        }
        return found;
    }

    private static Optional<Definition> define(Tree tree) {
        if (tree instanceof VariableTree variable) {
            return Optional.of(Definition.variable(variable.getName().toString()));
        }
        if (tree instanceof MethodTree method) {
            return Optional.of(Definition.method(method.getName().toString(), parameterTypes(method)));
        }
        if (tree instanceof ClassTree type) {
            return Optional.of(Definition.type(type.getSimpleName().toString(), keepsState(type)));
        }
        if (tree instanceof ImportTree imported) {
            MemberSelectTree name = (MemberSelectTree) imported.getQualifiedIdentifier();
            return Optional.of(Definition.imported(name.getIdentifier().toString()));
        }
        return Optional.empty();
    }

    private static String parameterTypes(MethodTree method) {
        return method.getParameters().stream()
                .map(parameter -> parameter.getType().toString())
                .collect(Collectors.joining(", "));
    }

    /** Whether a class has static fields that can change, its nested classes' among them. */
    private static boolean keepsState(ClassTree type) {
        return type.getMembers().stream()
                .anyMatch(member -> member instanceof ClassTree nested ? keepsState(nested) : isState(member));
    }

    private static boolean isState(Tree member) {
        return member instanceof VariableTree field && isStatic(field) && !isConstant(field);
    }

    private static boolean isStatic(VariableTree field) {
        return field.getModifiers().getFlags().contains(Modifier.STATIC);
    }

    private static boolean isConstant(VariableTree field) {
        return field.getModifiers().getFlags().contains(Modifier.FINAL)
                && field.getInitializer() instanceof LiteralTree;
    }

    private static Optional<SnippetSource.Declared> control(Tree tree) {
        if (!(tree instanceof VariableTree variable)
                || !(variable.getInitializer() instanceof MethodInvocationTree call)
                || !CONTROLS.contains(calledName(call))) {
            return Optional.empty();
        }
        List<? extends ExpressionTree> arguments = call.getArguments();
        boolean isDial = calledName(call).equals("dial");
        boolean ranged = isDial && arguments.size() == FREE_DIAL_ARGUMENTS;
        return Optional.of(new SnippetSource.Declared(
                variable.getName().toString(),
                isDial,
                ranged ? plainNumber(arguments.get(2)) : Double.NaN,
                ranged ? plainNumber(arguments.get(3)) : Double.NaN));
    }

    private static double plainNumber(Tree tree) {
        if (tree instanceof LiteralTree literal && literal.getValue() instanceof Number number) {
            return number.doubleValue();
        }
        if (tree instanceof UnaryTree unary && unary.getKind() == Tree.Kind.UNARY_MINUS) {
            return -plainNumber(unary.getExpression());
        }
        return Double.NaN;
    }

    /** The name of what is called, where it is called by its bare name or as {@code Prelude.…}. */
    static String calledName(MethodInvocationTree call) {
        if (call.getMethodSelect() instanceof IdentifierTree bare) {
            return bare.getName().toString();
        }
        boolean ours = call.getMethodSelect() instanceof MemberSelectTree select
                && select.getExpression().toString().endsWith("Prelude");
        return ours
                ? ((MemberSelectTree) call.getMethodSelect()).getIdentifier().toString()
                : "";
    }

    private Optional<SnippetSource.Fault> fault(NameScan scan, Optional<SnippetSource.Declared> control) {
        return scan.calls().stream()
                .filter(call -> CONTROLS.contains(calledName(call)))
                .skip(control.isPresent() ? 1 : 0)
                .findFirst()
                .map(this::misplaced);
    }

    /** A first value made from the variable itself would be another each time that the row runs. */
    private Optional<SnippetSource.Fault> circular(Tree tree) {
        if (!(tree instanceof VariableTree variable) || variable.getInitializer() == null) {
            return Optional.empty();
        }
        String name = variable.getName().toString();
        return NameScan.usedAtOnce(variable.getInitializer()).contains(name)
                ? Optional.of(fault(
                        variable.getInitializer(),
                        name + " is used in its own first value; give it one from" + " the names above."))
                : Optional.empty();
    }

    private SnippetSource.Fault misplaced(MethodInvocationTree call) {
        String name = calledName(call);
        return fault(
                call,
                name + "(…) stands only as the whole initialiser of a variable of the page, as in "
                        + (name.equals("dial") ? "double head = dial(…);" : "Bike mine = pick(…);")
                        + " not in a loop, a method, a lambda or an expression.");
    }

    private SnippetSource.Fault fault(Tree tree, String sentence) {
        int place = offset + start(tree) - wrapped.wrapping().shift();
        RowSource row = new RowSource(rowText, List.of());
        return new SnippetSource.Fault(row.lineAt(place), row.columnAt(place), sentence);
    }

    private int start(Tree tree) {
        return (int) positions.getStartPosition(unit, tree);
    }
}
