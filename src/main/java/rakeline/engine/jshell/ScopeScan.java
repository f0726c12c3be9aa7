package rakeline.engine.jshell;

import com.sun.source.tree.BinaryTree;
import com.sun.source.tree.BindingPatternTree;
import com.sun.source.tree.BlockTree;
import com.sun.source.tree.CaseTree;
import com.sun.source.tree.CatchTree;
import com.sun.source.tree.ClassTree;
import com.sun.source.tree.ConditionalExpressionTree;
import com.sun.source.tree.EnhancedForLoopTree;
import com.sun.source.tree.ForLoopTree;
import com.sun.source.tree.IfTree;
import com.sun.source.tree.InstanceOfTree;
import com.sun.source.tree.LambdaExpressionTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.Tree;
import com.sun.source.tree.TryTree;
import com.sun.source.tree.TypeParameterTree;
import com.sun.source.tree.VariableTree;
import com.sun.source.tree.WhileLoopTree;
import com.sun.source.util.TreeScanner;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.Set;
import java.util.function.Supplier;

/** Walks through a snippet and knows at each place which names it has declared there itself. */
abstract class ScopeScan extends TreeScanner<Void, Void> {
    private final Deque<Set<String>> scopes = new ArrayDeque<>();
    private boolean inTest;

    ScopeScan() {
        scopes.push(new HashSet<>());
    }

    /** Whether the snippet itself has declared the name, of a method where it ends in brackets, for this place. */
    final boolean isOwn(String name) {
        return scopes.stream().anyMatch(scope -> scope.contains(name));
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
            if (tree.getKind() == Tree.Kind.RECORD) {
                tree.getMembers().forEach(this::declareAccessor);
            }
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

    /** What the pattern of a test binds is known only where the test holds, see {@link Bindings}. */
    @Override
    public Void visitInstanceOf(InstanceOfTree tree, Void none) {
        boolean before = inTest;
        inTest = true;
        super.visitInstanceOf(tree, null);
        inTest = before;
        return null;
    }

    @Override
    public Void visitBindingPattern(BindingPatternTree tree, Void none) {
        return inTest ? scan(tree.getVariable().getType(), null) : super.visitBindingPattern(tree, null);
    }

    @Override
    public Void visitBinary(BinaryTree tree, Void none) {
        scan(tree.getLeftOperand(), null);
        return knowing(
                switch (tree.getKind()) {
                    case CONDITIONAL_AND -> Bindings.whenTrue(tree.getLeftOperand());
                    case CONDITIONAL_OR -> Bindings.whenFalse(tree.getLeftOperand());
                    default -> Set.of();
                },
                tree.getRightOperand());
    }

    @Override
    public Void visitConditionalExpression(ConditionalExpressionTree tree, Void none) {
        scan(tree.getCondition(), null);
        knowing(Bindings.whenTrue(tree.getCondition()), tree.getTrueExpression());
        return knowing(Bindings.whenFalse(tree.getCondition()), tree.getFalseExpression());
    }

    @Override
    public Void visitIf(IfTree tree, Void none) {
        scan(tree.getCondition(), null);
        knowing(Bindings.whenTrue(tree.getCondition()), tree.getThenStatement());
        knowing(Bindings.whenFalse(tree.getCondition()), tree.getElseStatement());
        boolean onlyElse = !Bindings.goesOn(tree.getThenStatement());
        boolean onlyThen = tree.getElseStatement() != null && !Bindings.goesOn(tree.getElseStatement());
        scopes.element().addAll(onlyElse ? Bindings.whenFalse(tree.getCondition()) : Set.of());
        scopes.element().addAll(onlyThen ? Bindings.whenTrue(tree.getCondition()) : Set.of());
        return null;
    }

    @Override
    public Void visitWhileLoop(WhileLoopTree tree, Void none) {
        scan(tree.getCondition(), null);
        knowing(Bindings.whenTrue(tree.getCondition()), tree.getStatement());
        scopes.element().addAll(Bindings.whenFalse(tree.getCondition()));
        return null;
    }

    @Override
    public Void visitForLoop(ForLoopTree tree, Void none) {
        return within(() -> {
            scan(tree.getInitializer(), null);
            scan(tree.getCondition(), null);
            scopes.element().addAll(Bindings.whenTrue(tree.getCondition()));
            scan(tree.getUpdate(), null);
            return scan(tree.getStatement(), null);
        });
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

    private void declareAccessor(Tree member) {
        if (member instanceof VariableTree component) {
            declare(component.getName() + "()");
        }
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

    private void declare(String name) {
        scopes.element().add(name);
    }

    private Void knowing(Set<String> names, Tree tree) {
        return within(() -> {
            scopes.element().addAll(names);
            return scan(tree, null);
        });
    }

    private Void within(Supplier<Void> work) {
        scopes.push(new HashSet<>());
        work.get();
        scopes.pop();
        return null;
    }
}
