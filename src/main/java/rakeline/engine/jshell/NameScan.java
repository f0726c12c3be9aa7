package rakeline.engine.jshell;

import com.sun.source.tree.ArrayAccessTree;
import com.sun.source.tree.AssignmentTree;
import com.sun.source.tree.BlockTree;
import com.sun.source.tree.CaseTree;
import com.sun.source.tree.CatchTree;
import com.sun.source.tree.ClassTree;
import com.sun.source.tree.CompoundAssignmentTree;
import com.sun.source.tree.EnhancedForLoopTree;
import com.sun.source.tree.ForLoopTree;
import com.sun.source.tree.IdentifierTree;
import com.sun.source.tree.ImportTree;
import com.sun.source.tree.LambdaExpressionTree;
import com.sun.source.tree.MemberSelectTree;
import com.sun.source.tree.MethodInvocationTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.ParenthesizedTree;
import com.sun.source.tree.Tree;
import com.sun.source.tree.TryTree;
import com.sun.source.tree.TypeParameterTree;
import com.sun.source.tree.UnaryTree;
import com.sun.source.tree.VariableTree;
import com.sun.source.util.TreeScanner;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Supplier;

/**
 * Finds the names that a snippet takes from outside itself, scope by scope; methods apart from all else. Where scopes
 * are too subtle for it, as with patterns in conditions, it errs towards a name being the snippet's own.
 */
class NameScan extends TreeScanner<Void, Void> {
    private final Deque<Set<String>> scopes = new ArrayDeque<>();
    private final Set<String> uses = new HashSet<>();
    private final Set<String> assigns = new HashSet<>();
    private final List<MethodInvocationTree> calls = new ArrayList<>();

    NameScan() {
        scopes.push(new HashSet<>());
    }

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

    @Override
    public Void visitVariable(VariableTree tree, Void none) {
        declare(tree.getName().toString());
        return super.visitVariable(tree, null);
    }

    @Override
    public Void visitTypeParameter(TypeParameterTree tree, Void none) {
        declare(tree.getName().toString());
        return super.visitTypeParameter(tree, null);
    }

    @Override
    public Void visitClass(ClassTree tree, Void none) {
        declare(tree.getSimpleName().toString());
        return within(() -> {
            tree.getMembers().forEach(this::declareMember);
            return super.visitClass(tree, null);
        });
    }

    @Override
    public Void visitMethod(MethodTree tree, Void none) {
        declare(tree.getName() + "()");
        return within(() -> super.visitMethod(tree, null));
    }

    @Override
    public Void visitBlock(BlockTree tree, Void none) {
        return within(() -> super.visitBlock(tree, null));
    }

    @Override
    public Void visitForLoop(ForLoopTree tree, Void none) {
        return within(() -> super.visitForLoop(tree, null));
    }

    @Override
    public Void visitEnhancedForLoop(EnhancedForLoopTree tree, Void none) {
        scan(tree.getExpression(), null);
        return within(() -> {
            scan(tree.getVariable(), null);
            return scan(tree.getStatement(), null);
        });
    }

    @Override
    public Void visitLambdaExpression(LambdaExpressionTree tree, Void none) {
        return within(() -> super.visitLambdaExpression(tree, null));
    }

    @Override
    public Void visitTry(TryTree tree, Void none) {
        return within(() -> super.visitTry(tree, null));
    }

    @Override
    public Void visitCatch(CatchTree tree, Void none) {
        return within(() -> super.visitCatch(tree, null));
    }

    @Override
    public Void visitCase(CaseTree tree, Void none) {
        return within(() -> super.visitCase(tree, null));
    }

    private void declareMember(Tree member) {
        if (member instanceof VariableTree field) {
            declare(field.getName().toString());
        } else if (member instanceof MethodTree method) {
            declare(method.getName() + "()");
        } else if (member instanceof ClassTree nested) {
            declare(nested.getSimpleName().toString());
        }
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

    private boolean isOwn(String name) {
        return scopes.stream().anyMatch(scope -> scope.contains(name));
    }

    private void declare(String name) {
        scopes.element().add(name);
    }

    private Void within(Supplier<Void> work) {
        scopes.push(new HashSet<>());
        work.get();
        scopes.pop();
        return null;
    }
}
