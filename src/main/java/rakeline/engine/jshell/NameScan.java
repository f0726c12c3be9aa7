package rakeline.engine.jshell;

import com.sun.source.tree.ArrayAccessTree;
import com.sun.source.tree.AssignmentTree;
import com.sun.source.tree.ClassTree;
import com.sun.source.tree.CompoundAssignmentTree;
import com.sun.source.tree.IdentifierTree;
import com.sun.source.tree.ImportTree;
import com.sun.source.tree.LambdaExpressionTree;
import com.sun.source.tree.MemberSelectTree;
import com.sun.source.tree.MethodInvocationTree;
import com.sun.source.tree.ParenthesizedTree;
import com.sun.source.tree.Tree;
import com.sun.source.tree.UnaryTree;
import com.sun.source.tree.VariableTree;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Finds the names that a snippet takes from outside itself, scope by scope; methods apart from all else. */
class NameScan extends ScopeScan {
    private final Set<String> uses = new HashSet<>();
    private final Set<String> assigns = new HashSet<>();
    private final List<MethodInvocationTree> calls = new ArrayList<>();

    /** The names that are read where the expression stands; those in lambdas and classes are read later, if at all. */
    static Set<String> usedAtOnce(Tree expression) {
        NameScan scan = new NameScan() {
            @Override
            public Void visitLambdaExpression(LambdaExpressionTree tree, Void none) {
                return null;
            }

            @Override
            public Void visitClass(ClassTree tree, Void none) {
                return null;
            }
        };
        scan.scan(expression, null);
        return scan.uses();
    }

    /** Scans what stands at the top level, where a variable is no local. */
    void scanTop(Tree tree) {
        if (tree instanceof VariableTree variable) {
            scan(variable.getModifiers(), null);
            scan(variable.getType(), null);
            scan(variable.getInitializer(), null);
        } else {
            scan(tree, null);
        }
    }

    Set<String> uses() {
        return uses;
    }

    Set<String> assigns() {
        return assigns;
    }

    /** Calls by a bare name or through {@code Prelude}. */
    List<MethodInvocationTree> calls() {
        return calls;
    }

    @Override
    public Void visitImport(ImportTree tree, Void none) {
        return null;
    }

    @Override
    public Void visitIdentifier(IdentifierTree tree, Void none) {
        use(tree.getName().toString());
        return null;
    }

    @Override
    public Void visitMethodInvocation(MethodInvocationTree tree, Void none) {
        calls.add(tree);
        scan(tree.getTypeArguments(), null);
        if (tree.getMethodSelect() instanceof IdentifierTree bare) {
            use(bare.getName() + "()");
        } else {
            scan(tree.getMethodSelect(), null);
        }
        return scan(tree.getArguments(), null);
    }

    @Override
    public Void visitAssignment(AssignmentTree tree, Void none) {
        assign(tree.getVariable());
        return super.visitAssignment(tree, null);
    }

    @Override
    public Void visitCompoundAssignment(CompoundAssignmentTree tree, Void none) {
        assign(tree.getVariable());
        return super.visitCompoundAssignment(tree, null);
    }

    @Override
    public Void visitUnary(UnaryTree tree, Void none) {
        switch (tree.getKind()) {
            case PREFIX_INCREMENT, PREFIX_DECREMENT, POSTFIX_INCREMENT, POSTFIX_DECREMENT ->
                assign(tree.getExpression());
            default -> {}
        }
        return super.visitUnary(tree, null);
    }

    /** Notes the variable at the root of what is assigned: {@code a} in {@code a[0]} and {@code a.b}. */
    private void assign(Tree target) {
        if (target instanceof IdentifierTree name) {
            if (!isOwn(name.getName().toString())) {
                assigns.add(name.getName().toString());
            }
        } else if (target instanceof ArrayAccessTree element) {
            assign(element.getExpression());
        } else if (target instanceof MemberSelectTree field) {
            assign(field.getExpression());
        } else if (target instanceof ParenthesizedTree inside) {
            assign(inside.getExpression());
        }
    }

    private void use(String name) {
        if (!isOwn(name)) {
            uses.add(name);
        }
    }
}
