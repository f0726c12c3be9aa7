package rakeline;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.simpleName;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.type;
import static com.tngtech.archunit.lang.conditions.ArchConditions.accessField;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.GeneralCodingRules.ACCESS_STANDARD_STREAMS;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.lang.ArchRule;
import java.awt.AWTError;
import java.awt.GraphicsEnvironment;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

/** The house that Rakeline is: which package may import which, and what is done in one place only. */
final class House {
    private static final String[] DRAWING = {"java.awt..", "javax.swing..", "org.jfree.."};
    private static final String[] SCIENCE = {"quantity", "geometry", "rider", "handling", "study"};
    private static final String[] BELOW_WINDOW = {
        "quantity",
        "json",
        "geometry",
        "rider",
        "handling",
        "study",
        "catalogue",
        "figure",
        "figure.paint",
        "worksheet",
        "engine",
        "engine.jshell",
        "prelude",
        "handout",
        "help",
        "desk"
    };

    private final String root;

    House(String root) {
        this.root = root;
    }

    /** One rule for each package, innermost first. */
    List<ArchRule> rooms() {
        return List.of(
                room("quantity", "it is the vocabulary that all others share"),
                room("json", "it reads text and knows nothing of what the text is about", "quantity"),
                room("geometry", "a bicycle stands by itself, without a rider", "quantity"),
                room("rider", "a body is placed on a solved bicycle", "quantity", "geometry"),
                room("handling", "dynamics need the bicycle and who rides it", "quantity", "geometry", "rider"),
                room("study", "it asks questions of the models below it", "quantity", "geometry", "rider", "handling"),
                room(
                        "catalogue",
                        "it fills the models from files",
                        "json",
                        "quantity",
                        "geometry",
                        "rider",
                        "handling"),
                room("figure", "a figure is plain data about what was studied", SCIENCE),
                room("figure.paint", "a painter knows figures and what they are made of", "figure", "quantity"),
                room(
                        "worksheet",
                        "the document runs nothing; it shares the reading of JSON and the refusal with the catalogue",
                        "json",
                        "quantity"),
                room("engine", "it turns a page into outcomes, however it is run", "worksheet", "figure", "quantity"),
                room(
                        "prelude",
                        "it is a facade over the models",
                        "quantity",
                        "geometry",
                        "rider",
                        "handling",
                        "study",
                        "catalogue",
                        "figure"),
                room(
                        "engine.jshell",
                        "it implements the engine with the prelude, and what both are made of",
                        "engine",
                        "prelude",
                        "worksheet",
                        "figure",
                        "catalogue",
                        "quantity"),
                room(
                        "handout",
                        "it lays out a page that has run",
                        "worksheet",
                        "engine",
                        "figure",
                        "figure.paint",
                        "quantity"),
                room("help", "it explains declarations", "quantity"),
                room("desk", "it keeps documents and knows nothing of running them", "worksheet", "json", "quantity"),
                room("shell", "the window does without commands", BELOW_WINDOW),
                room("command", "commands do without a window", BELOW_WINDOW));
    }

    /** A package and those below it may import these, themselves and what is not ours. */
    private ArchRule room(String name, String reason, String... mayImport) {
        DescribedPredicate<JavaClass> allowed = Arrays.stream(mayImport)
                .map(this::in)
                .reduce(in(name).or(notOurs()), (one, other) -> one.or(other))
                .as("itself, %s or what is not ours", List.of(mayImport));
        return classes()
                .that(in(name))
                .should()
                .onlyDependOnClassesThat(allowed)
                .because(reason)
                .allowEmptyShould(true);
    }

    private DescribedPredicate<JavaClass> notOurs() {
        return DescribedPredicate.not(resideInAPackage(root + ".."));
    }

    /** The classes of one package: a name in the list that lies further inside is a package of its own. */
    private DescribedPredicate<JavaClass> in(String name) {
        DescribedPredicate<JavaClass> whole = resideInAPackage(packages(name));
        DescribedPredicate<JavaClass> others = Arrays.stream(BELOW_WINDOW)
                .filter(other -> other.startsWith(name + "."))
                .map(other -> resideInAPackage(packages(other)))
                .reduce(DescribedPredicate.alwaysFalse(), (one, other) -> one.or(other));
        return whole.and(DescribedPredicate.not(others)).as(root + "." + name);
    }

    private String packages(String name) {
        return root + "." + name + "..";
    }

    private DescribedPredicate<JavaClass> inAny(String... names) {
        return Arrays.stream(names)
                .map(this::in)
                .reduce(DescribedPredicate.alwaysFalse(), (one, other) -> one.or(other))
                .as("reside in %s", List.of(names));
    }

    private DescribedPredicate<JavaClass> outside(String... names) {
        return DescribedPredicate.not(inAny(names)).as("outside %s", List.of(names));
    }

    ArchRule everyClassHasItsRoom() {
        String[] known = Stream.concat(
                        Stream.of(root),
                        Stream.concat(Stream.of("shell", "command"), Arrays.stream(BELOW_WINDOW))
                                .map(this::packages))
                .toArray(String[]::new);
        return classes()
                .should()
                .resideInAnyPackage(known)
                .because("a class outside the house answers to no rule; move it or change the design");
    }

    ArchRule noCycles() {
        return slices().matching(root + ".(**)")
                .should()
                .beFreeOfCycles()
                .because("packages that need each other are one package");
    }

    ArchRule drawingInItsPlaces() {
        return noClasses()
                .that(outside("figure.paint", "handout", "shell"))
                .and(DescribedPredicate.not(resideInAPackage(root)))
                .should()
                .dependOnClassesThat(resideInAnyPackage(DRAWING))
                .because("everything else works without a display, the worker included")
                .allowEmptyShould(true);
    }

    ArchRule onlyTheDisplayCheckInTheRoot() {
        return noClasses()
                .that(resideInAPackage(root))
                .should()
                .dependOnClassesThat(resideInAnyPackage(DRAWING)
                        .and(DescribedPredicate.not(type(GraphicsEnvironment.class)))
                        .and(DescribedPredicate.not(type(AWTError.class))))
                .because("the root asks whether there is a display, and draws nothing");
    }

    ArchRule widgetsInTheWindow() {
        return noClasses()
                .that(outside("shell"))
                .should()
                .dependOnClassesThat(
                        resideInAnyPackage("javax.swing..", "com.formdev..", "org.fife..", "net.miginfocom.."))
                .because("painters draw and widgets host")
                .allowEmptyShould(true);
    }

    ArchRule jshellInOnePlace() {
        return noClasses()
                .that(outside("engine.jshell"))
                .should()
                .dependOnClassesThat(resideInAPackage("jdk.jshell.."))
                .because("the engine can be replaced, and measuring works where the module is missing")
                .allowEmptyShould(true);
    }

    ArchRule valuesNeverChange() {
        return fields().that()
                .areDeclaredInClassesThat(inAny("quantity", "geometry", "rider", "handling", "study", "figure"))
                .should()
                .beFinal()
                .because("values are shared between threads and kept in undo")
                .allowEmptyShould(true);
    }

    /** The agent's side of the worker is {@code Agent} and the {@code Bench} that it sets up. */
    ArchRule standardStreamsInTheirPlaces() {
        DescribedPredicate<JavaClass> agent =
                in("engine.jshell").and(simpleName("Agent").or(simpleName("Bench")));
        return noClasses()
                .that(outside("command"))
                .and(DescribedPredicate.not(resideInAPackage(root)))
                .and(DescribedPredicate.not(agent))
                .should(ACCESS_STANDARD_STREAMS.or(accessField(System.class, "in")))
                .because("a window's standard output is read by nobody, and a command's is data")
                .allowEmptyShould(true);
    }

    /** All of them. */
    Stream<ArchRule> rules() {
        return Stream.concat(
                rooms().stream(),
                Stream.of(
                        everyClassHasItsRoom(),
                        noCycles(),
                        drawingInItsPlaces(),
                        onlyTheDisplayCheckInTheRoot(),
                        widgetsInTheWindow(),
                        jshellInOnePlace(),
                        valuesNeverChange(),
                        standardStreamsInTheirPlaces()));
    }
}
