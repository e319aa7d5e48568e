package org.footwell;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.library.Architectures.LayeredArchitecture;
import java.util.stream.Stream;

/** Which room may look into which. Reads like the diagram in DEVELOPERS.md. */
@AnalyzeClasses(packages = "org.footwell", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {

  /** One topic of the trade each. */
  private static final String[] TOPICS = {
    "load", "amplifier", "heat", "gain", "impedance", "passive", "supply", "level", "alignment"
  };

  @ArchTest
  static final ArchRule arrowsPointOneWay =
      rooms()
          .whereLayer("main")
          .mayOnlyBeAccessedByLayers("contract")
          .whereLayer("contract")
          .mayNotBeAccessedByAnyLayer()
          .whereLayer("web")
          .mayOnlyBeAccessedByLayers("main", "contract")
          .whereLayer("plan")
          .mayOnlyBeAccessedByLayers("main")
          .whereLayer("load")
          .mayOnlyBeAccessedByLayers("main", "plan")
          .whereLayer("amplifier")
          .mayOnlyBeAccessedByLayers("main", "plan", "load")
          .whereLayer("heat")
          .mayOnlyBeAccessedByLayers("main", "plan")
          .whereLayer("gain")
          .mayOnlyBeAccessedByLayers("main", "plan")
          .whereLayer("impedance")
          .mayOnlyBeAccessedByLayers("main", "plan", "passive")
          .whereLayer("passive")
          .mayOnlyBeAccessedByLayers("main")
          .whereLayer("supply")
          .mayOnlyBeAccessedByLayers("main", "plan")
          .whereLayer("level")
          .mayOnlyBeAccessedByLayers("main", "plan")
          .whereLayer("alignment")
          .mayOnlyBeAccessedByLayers("main", "plan")
          .whereLayer("parts")
          .mayOnlyBeAccessedByLayers(topicsAnd("plan"))
          .whereLayer("physics")
          .mayOnlyBeAccessedByLayers(topicsAnd("plan", "parts"));

  private static LayeredArchitecture rooms() {
    LayeredArchitecture rooms =
        layeredArchitecture()
            .consideringOnlyDependenciesInLayers()
            .layer("main")
            .definedBy("org.footwell");
    for (String room : topicsAnd("contract", "web", "plan", "parts", "physics", "calculation")) {
      rooms = rooms.layer(room).definedBy("org.footwell." + room + "..");
    }
    return rooms;
  }

  private static String[] topicsAnd(String... others) {
    return Stream.concat(Stream.of(TOPICS), Stream.of(others)).toArray(String[]::new);
  }

  @ArchTest
  static final ArchRule noRoomsInACircle =
      slices().matching("org.footwell.(*)..").should().beFreeOfCycles();

  @ArchTest
  static final ArchRule onlyTheEdgeKnowsHttpAndJson =
      noClasses()
          .that()
          .resideOutsideOfPackages("..web..", "..contract..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(
              "io.javalin..",
              "jakarta.servlet..",
              "org.eclipse.jetty..",
              "com.fasterxml.jackson.core..",
              "com.fasterxml.jackson.databind..",
              "io.micrometer..");

  @ArchTest
  static final ArchRule contractToolsStayOutOfTheService =
      noClasses()
          .that()
          .resideOutsideOfPackage("..contract..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("io.swagger.v3.core..", "io.swagger.v3.oas.models..");

  @ArchTest
  static final ArchRule calculationsHoldNoState =
      classes()
          .that()
          .implement(org.footwell.calculation.Calculation.class)
          .should()
          .haveOnlyFinalFields();
}
