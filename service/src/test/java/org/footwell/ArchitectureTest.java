package org.footwell;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

/** Which room may look into which. Reads like the diagram in DEVELOPERS.md. */
@AnalyzeClasses(packages = "org.footwell", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {

  @ArchTest
  static final ArchRule arrowsPointOneWay =
      layeredArchitecture()
          .consideringOnlyDependenciesInLayers()
          .layer("main")
          .definedBy("org.footwell")
          .layer("contract")
          .definedBy("..contract..")
          .layer("web")
          .definedBy("..web..")
          .layer("plan")
          .definedBy("..plan..")
          .layer("load")
          .definedBy("..load..")
          .layer("amplifier")
          .definedBy("..amplifier..")
          .layer("level")
          .definedBy("..level..")
          .layer("alignment")
          .definedBy("..alignment..")
          .layer("parts")
          .definedBy("..parts..")
          .layer("physics")
          .definedBy("..physics..")
          .layer("calculation")
          .definedBy("..calculation..")
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
          .mayOnlyBeAccessedByLayers("main", "plan")
          .whereLayer("level")
          .mayOnlyBeAccessedByLayers("main", "plan")
          .whereLayer("alignment")
          .mayOnlyBeAccessedByLayers("main", "plan")
          .whereLayer("parts")
          .mayOnlyBeAccessedByLayers("plan", "load", "amplifier", "level", "alignment")
          .whereLayer("physics")
          .mayOnlyBeAccessedByLayers("plan", "parts", "load", "amplifier", "level", "alignment");

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
