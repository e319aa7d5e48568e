package org.footwell;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static java.util.Map.entry;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.library.Architectures.LayeredArchitecture;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** Which room may look into which. Reads like the diagram in DEVELOPERS.md. */
@AnalyzeClasses(packages = "org.footwell", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {

  /** One topic of the trade each; only the plan sees them, and the topics named behind them. */
  private static final Map<String, List<String>> TOPICS =
      Map.ofEntries(
          entry("load", List.of()),
          entry("amplifier", List.of("load")),
          entry("heat", List.of()),
          entry("gain", List.of()),
          entry("impedance", List.of("passive")),
          entry("passive", List.of()),
          entry("supply", List.of()),
          entry("level", List.of()),
          entry("crossover", List.of()),
          entry("fit", List.of()),
          entry("drawing", List.of("fit")),
          entry("comparison", List.of()),
          entry("sides", List.of("comparison")),
          entry("exposure", List.of()),
          entry("loudness", List.of()),
          entry("seatlevel", List.of()),
          entry("filters", List.of()),
          entry("driver", List.of()),
          entry("arrival", List.of()),
          entry("radiator", List.of("enclosure", "lowend")),
          entry("lowend", List.of("enclosure")),
          entry("enclosure", List.of()),
          entry("carpentry", List.of()),
          entry("balance", List.of()),
          entry("correction", List.of()),
          entry("handover", List.of()),
          entry("factorysignal", List.of()),
          entry("rolloff", List.of()),
          entry("clipping", List.of()),
          entry("alignment", List.of()));

  @ArchTest static final ArchRule arrowsPointOneWay = arrows();

  private static LayeredArchitecture arrows() {
    LayeredArchitecture arrows =
        rooms()
            .whereLayer("main")
            .mayOnlyBeAccessedByLayers("contract")
            .whereLayer("contract")
            .mayNotBeAccessedByAnyLayer()
            .whereLayer("web")
            .mayOnlyBeAccessedByLayers("main", "contract")
            .whereLayer("plan")
            .mayOnlyBeAccessedByLayers("main")
            .whereLayer("parts")
            .mayOnlyBeAccessedByLayers(topicsAnd("plan"))
            .whereLayer("signal")
            .mayOnlyBeAccessedByLayers(topicsAnd("plan", "measurement"))
            .whereLayer("recording")
            .mayOnlyBeAccessedByLayers(topicsAnd("web", "measurement"))
            .whereLayer("measurement")
            .mayOnlyBeAccessedByLayers(topicsAnd())
            .whereLayer("physics")
            .mayOnlyBeAccessedByLayers(topicsAnd("plan", "parts", "signal", "measurement"));
    for (Map.Entry<String, List<String>> topic : TOPICS.entrySet()) {
      arrows =
          arrows
              .whereLayer(topic.getKey())
              .mayOnlyBeAccessedByLayers(
                  Stream.concat(Stream.of("main", "plan"), topic.getValue().stream())
                      .toArray(String[]::new));
    }
    return arrows;
  }

  private static LayeredArchitecture rooms() {
    LayeredArchitecture rooms =
        layeredArchitecture()
            .consideringOnlyDependenciesInLayers()
            .layer("main")
            .definedBy("org.footwell");
    for (String room :
        topicsAnd(
            "contract",
            "web",
            "plan",
            "parts",
            "signal",
            "recording",
            "measurement",
            "physics",
            "calculation")) {
      rooms = rooms.layer(room).definedBy("org.footwell." + room + "..");
    }
    return rooms;
  }

  private static String[] topicsAnd(String... others) {
    return Stream.concat(TOPICS.keySet().stream(), Stream.of(others)).toArray(String[]::new);
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
