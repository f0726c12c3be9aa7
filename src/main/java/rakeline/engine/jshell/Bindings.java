package rakeline.engine.jshell;

import com.sun.source.tree.BinaryTree;
import com.sun.source.tree.BindingPatternTree;
import com.sun.source.tree.BlockTree;
import com.sun.source.tree.BreakTree;
import com.sun.source.tree.ContinueTree;
import com.sun.source.tree.IfTree;
import com.sun.source.tree.InstanceOfTree;
import com.sun.source.tree.ParenthesizedTree;
import com.sun.source.tree.ReturnTree;
import com.sun.source.tree.StatementTree;
import com.sun.source.tree.ThrowTree;
import com.sun.source.tree.Tree;
import com.sun.source.tree.Tree.Kind;
import com.sun.source.tree.UnaryTree;
import com.sun.source.tree.YieldTree;
import com.sun.source.util.TreeScanner;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * The names that patterns in a condition bind where it is true, and where it is false, and whether the statement after
 * can be reached at all. Source: Java Language Specification, chapter 6.3.1 and 6.3.2.
 */
final class Bindings {
    private Bindings() {}

    static Set<String> whenTrue(Tree condition) {
        return when(condition, true);
    }

    static Set<String> whenFalse(Tree condition) {
        return when(condition, false);
    }

    private static Set<String> when(Tree condition, boolean holds) {
        if (condition instanceof ParenthesizedTree inside) {
            return when(inside.getExpression(), holds);
        }
        if (condition instanceof UnaryTree not && not.getKind() == Kind.LOGICAL_COMPLEMENT) {
            return when(not.getExpression(), !holds);
        }
        if (condition instanceof BinaryTree both
                && both.getKind() == (holds ? Kind.CONDITIONAL_AND : Kind.CONDITIONAL_OR)) {
            Set<String> names = new HashSet<>(when(both.getLeftOperand(), holds));
            names.addAll(when(both.getRightOperand(), holds));
            return names;
        }
        return holds && condition instanceof InstanceOfTree test ? boundIn(test) : Set.of();
    }

    private static Set<String> boundIn(InstanceOfTree test) {
        Set<String> names = new HashSet<>();
        new TreeScanner<Void, Void>() {
            @Override
            public Void visitBindingPattern(BindingPatternTree pattern, Void none) {
                names.add(pattern.getVariable().getName().toString());
                return null;
            }
        }.scan(test.getPattern(), null);
        return names;
    }

    /** Whether what stands below the statement can be reached through it, told from its last statements. */
    static boolean goesOn(StatementTree statement) {
        if (statement instanceof BlockTree block) {
            List<? extends StatementTree> inside = block.getStatements();
            return inside.isEmpty() || goesOn(inside.get(inside.size() - 1));
        }
        if (statement instanceof IfTree either) {
            return either.getElseStatement() == null
                    || goesOn(either.getThenStatement())
                    || goesOn(either.getElseStatement());
        }
        return !(statement instanceof ReturnTree
                || statement instanceof ThrowTree
                || statement instanceof BreakTree
                || statement instanceof ContinueTree
                || statement instanceof YieldTree);
    }
}
