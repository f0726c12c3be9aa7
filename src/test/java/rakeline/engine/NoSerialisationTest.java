package rakeline.engine;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import org.junit.jupiter.api.Test;

class NoSerialisationTest {
    @Test
    void theEngineReadsNoSerialisedObjects() {
        noClasses()
                .should()
                .dependOnClassesThat()
                .haveFullyQualifiedName("java.io.ObjectInputStream")
                .because("what a worker sends must not be able to name a class to its host")
                .check(new ClassFileImporter()
                        .withImportOption(new ImportOption.DoNotIncludeTests())
                        .importPackages("rakeline.engine"));
    }
}
