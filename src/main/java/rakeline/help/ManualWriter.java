package rakeline.help;

import com.sun.source.doctree.DocCommentTree;
import com.sun.source.doctree.LinkTree;
import com.sun.source.doctree.LiteralTree;
import com.sun.source.doctree.ParamTree;
import com.sun.source.doctree.ReturnTree;
import com.sun.source.doctree.TextTree;
import com.sun.source.doctree.ThrowsTree;
import com.sun.source.doctree.ValueTree;
import com.sun.source.tree.ClassTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.ModifiersTree;
import com.sun.source.util.DocTreeScanner;
import com.sun.source.util.DocTrees;
import com.sun.source.util.JavacTask;
import com.sun.source.util.TreePath;
import com.sun.source.util.TreePathScanner;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.lang.model.element.Modifier;
import javax.tools.JavaCompiler;
import javax.tools.JavaFileObject;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;

/** Writes the {@link Manual} at build time, from what stands in the sources before their declarations. */
public final class ManualWriter {
    /** The packages whose values and methods are met in rows. */
    private static final List<String> MET_IN_ROWS =
            List.of("prelude", "geometry", "rider", "handling", "study", "figure", "quantity");

    private ManualWriter() {}

    /**
     * Writes the manual.
     *
     * @param args the folder of the sources, and the folder of the classes to put it beside
     */
    public static void main(String[] args) throws IOException {
        Path classes = Path.of(args[1]).resolve("rakeline").resolve("help");
        Files.createDirectories(classes);
        Files.writeString(
                classes.resolve(Manual.RESOURCE), read(Path.of(args[0])).write());
    }

    /** Reads the manual off the sources below a folder. */
    static Manual read(Path sources) throws IOException {
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        try (StandardJavaFileManager files = compiler.getStandardFileManager(null, null, StandardCharsets.UTF_8)) {
            Iterable<? extends JavaFileObject> units = files.getJavaFileObjectsFromPaths(files(sources));
            JavacTask task = (JavacTask) compiler.getTask(null, files, null, List.of("-proc:none"), null, units);
            Reading reading = new Reading(DocTrees.instance(task));
            for (CompilationUnitTree unit : task.parse()) {
                reading.scan(new TreePath(unit), null);
            }
            return new Manual(reading.entries);
        }
    }

    private static List<Path> files(Path sources) throws IOException {
        List<Path> found = new ArrayList<>();
        for (String name : MET_IN_ROWS) {
            try (Stream<Path> files = Files.walk(sources.resolve("rakeline").resolve(name))) {
                files.filter(file -> file.toString().endsWith(".java")).sorted().forEach(found::add);
            }
        }
        return found;
    }

    /** Collects the documentation of public types and methods. */
    private static final class Reading extends TreePathScanner<Void, Void> {
        private final DocTrees trees;
        private final Map<String, String> entries = new LinkedHashMap<>();

        Reading(DocTrees trees) {
            this.trees = trees;
        }

        @Override
        public Void visitClass(ClassTree type, Void none) {
            if (isPublic(type.getModifiers())) {
                keep(type.getSimpleName().toString());
            }
            return super.visitClass(type, null);
        }

        @Override
        public Void visitMethod(MethodTree method, Void none) {
            if (isPublic(method.getModifiers()) || isInInterface()) {
                List<String> types = method.getParameters().stream()
                        .map(parameter -> Manual.bare(parameter.toString()))
                        .map(words -> words.substring(0, words.lastIndexOf(' ')))
                        .toList();
                keep(Manual.key(typeName(), method.getName().toString(), types));
            }
            return null;
        }

        private boolean isInInterface() {
            return getCurrentPath().getParentPath().getLeaf().getKind() == com.sun.source.tree.Tree.Kind.INTERFACE;
        }

        private String typeName() {
            return ((ClassTree) getCurrentPath().getParentPath().getLeaf())
                    .getSimpleName()
                    .toString();
        }

        private static boolean isPublic(ModifiersTree modifiers) {
            return modifiers.getFlags().contains(Modifier.PUBLIC);
        }

        private void keep(String key) {
            DocCommentTree comment = trees.getDocCommentTree(getCurrentPath());
            String words = comment == null ? "" : Plain.of(comment);
            if (!words.isEmpty()) {
                entries.putIfAbsent(key, words);
            }
        }
    }

    /** A comment as one line of plain text. */
    private static final class Plain extends DocTreeScanner<Void, Void> {
        private final StringBuilder words = new StringBuilder();

        static String of(DocCommentTree comment) {
            Plain plain = new Plain();
            plain.scan(comment.getFullBody(), null);
            comment.getBlockTags().forEach(tag -> plain.scan(tag, null));
            return plain.words.toString().strip().replaceAll("\\s+", " ");
        }

        @Override
        public Void visitText(TextTree text, Void none) {
            words.append(text.getBody());
            return null;
        }

        @Override
        public Void visitLiteral(LiteralTree literal, Void none) {
            words.append(literal.getBody().getBody());
            return null;
        }

        @Override
        public Void visitLink(LinkTree link, Void none) {
            String target = link.getReference().getSignature().replaceFirst("^#", "");
            words.append(link.getLabel().isEmpty() ? target : label(link));
            return null;
        }

        private static String label(LinkTree link) {
            return link.getLabel().stream().map(Object::toString).collect(Collectors.joining());
        }

        @Override
        public Void visitValue(ValueTree value, Void none) {
            words.append(
                    value.getReference() == null
                            ? ""
                            : value.getReference().getSignature().replaceFirst("^#", ""));
            return null;
        }

        @Override
        public Void visitParam(ParamTree param, Void none) {
            words.append(' ').append(param.getName()).append(": ");
            scan(param.getDescription(), null);
            words.append('.');
            return null;
        }

        @Override
        public Void visitThrows(ThrowsTree tree, Void none) {
            words.append(" Refused ");
            scan(tree.getDescription(), null);
            words.append('.');
            return null;
        }

        @Override
        public Void visitReturn(ReturnTree tree, Void none) {
            words.append(" Returns ");
            scan(tree.getDescription(), null);
            words.append('.');
            return null;
        }
    }
}
