package org.footwell;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.junit.jupiter.api.Assertions.assertEquals;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaMethod;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.library.Architectures.LayeredArchitecture;
import com.tngtech.archunit.library.dependencies.SliceRule;
import java.net.DatagramSocket;
import java.net.Socket;
import java.net.URLConnection;
import java.net.http.HttpClient;
import java.nio.channels.SocketChannel;
import java.text.Collator;
import java.text.DateFormat;
import java.text.DateFormatSymbols;
import java.text.DecimalFormatSymbols;
import java.text.NumberFormat;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.footwell.calculation.Calculation;
import org.footwell.calculation.FaultCode;
import org.footwell.calculation.Finding;
import org.footwell.calculation.FindingCode;
import org.footwell.calculation.RecordAccess;
import org.footwell.calculation.Run;
import org.footwell.calculation.text.Marks;

/** Which room may look into which. Reads like the diagram in DEVELOPERS.md. */
@AnalyzeClasses(packages = "org.footwell", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {

  /** The groups of topics of the trade, none of which sees another. */
  private static final String[] GROUPS = {
    "electrical", "acoustic", "fitting", "measured", "factory"
  };

  /** For each room, those that may look into it. */
  private static final Map<String, String[]> SEEN_BY =
      Map.ofEntries(
          Map.entry("main", rooms("contract")),
          Map.entry("contract", rooms()),
          Map.entry("web", rooms("main", "contract")),
          Map.entry("analysis", rooms("main", "contract", "web")),
          Map.entry("vehicle", rooms("main")),
          Map.entry("electrical", rooms("main", "vehicle")),
          Map.entry("acoustic", rooms("main", "vehicle")),
          Map.entry("fitting", rooms("main", "vehicle")),
          Map.entry("measured", rooms("main")),
          Map.entry("factory", rooms("main")),
          Map.entry("plot", rooms("vehicle")),
          Map.entry("sheet", rooms("fitting", "plot", "vehicle", "web")),
          Map.entry("loudspeaker", rooms("electrical", "acoustic", "vehicle")),
          Map.entry("parts", groupsAnd("vehicle", "loudspeaker", "analysis")),
          Map.entry("signal", rooms("parts", "acoustic", "measured", "factory", "vehicle")),
          Map.entry("recording", rooms("measured", "factory", "web")),
          Map.entry("physics", groupsAnd("vehicle", "parts", "signal", "loudspeaker")));

  private static String[] rooms(String... names) {
    return names;
  }

  private static String[] groupsAnd(String... others) {
    return Stream.concat(Stream.of(GROUPS), Stream.of(others)).toArray(String[]::new);
  }

  @ArchTest static final ArchRule arrowsPointOneWay = arrows();

  private static LayeredArchitecture arrows() {
    LayeredArchitecture arrows =
        layeredArchitecture()
            .consideringOnlyDependenciesInLayers()
            .layer("main")
            .definedBy("org.footwell");
    for (String room : SEEN_BY.keySet()) {
      if (!room.equals("main")) {
        arrows = arrows.layer(room).definedBy("org.footwell." + room + "..");
      }
    }
    for (Map.Entry<String, String[]> room : SEEN_BY.entrySet()) {
      arrows =
          room.getValue().length == 0
              ? arrows.whereLayer(room.getKey()).mayNotBeAccessedByAnyLayer()
              : arrows.whereLayer(room.getKey()).mayOnlyBeAccessedByLayers(room.getValue());
    }
    return arrows;
  }

  @ArchTest
  static final ArchRule topicsOfTheElectricalGroup =
      topics(
          "electrical",
          Map.of("load", Set.of("amplifier"), "passive", Set.of("amplifier", "impedance")));

  @ArchTest static final ArchRule topicsOfTheAcousticGroup = topics("acoustic", Map.of());

  @ArchTest static final ArchRule topicsOfTheFittingGroup = topics("fitting", Map.of());

  @ArchTest
  static final ArchRule topicsOfTheMeasuredGroup =
      topics(
          "measured",
          Map.of(
              "arrival", Set.of("response"),
              "balance", Set.of("response"),
              "correction", Set.of("response"),
              "sum", Set.of("response")));

  @ArchTest static final ArchRule topicsOfTheFactoryGroup = topics("factory", Map.of());

  /** Topics of a group do not see each other, except where it is said. */
  private static ArchRule topics(String group, Map<String, Set<String>> looksInto) {
    SliceRule apart =
        slices()
            .matching("org.footwell." + group + ".(*)..")
            .namingSlices("$1")
            .should()
            .notDependOnEachOther();
    for (Map.Entry<String, Set<String>> arrows : looksInto.entrySet()) {
      for (String other : arrows.getValue()) {
        apart =
            apart.ignoreDependency(
                resideInAPackage("org.footwell." + group + "." + arrows.getKey() + ".."),
                resideInAPackage("org.footwell." + group + "." + other + ".."));
      }
    }
    return apart;
  }

  @ArchTest
  static final ArchRule noPackagesInACircle =
      slices().matching("org.footwell.(**)").should().beFreeOfCycles();

  /** Two classes of one name are two things that a reader takes for one. */
  @ArchTest
  static void noTwoClassesHaveOneName(JavaClasses all) {
    Map<String, List<String>> byName =
        all.stream()
            .filter(type -> type.isTopLevelClass() && !type.getSimpleName().equals("package-info"))
            .collect(
                Collectors.groupingBy(
                    JavaClass::getSimpleName,
                    TreeMap::new,
                    Collectors.mapping(JavaClass::getPackageName, Collectors.toList())));
    byName.values().removeIf(packages -> packages.size() == 1);
    assertEquals(Map.of(), byName);
  }

  /** A model answers with numbers; what is asked, judged and said is for the calculations. */
  @ArchTest
  static final ArchRule modelsKnowNoRequestAndNoFinding =
      noClasses()
          .that()
          .resideInAnyPackage(
              "org.footwell.loudspeaker..",
              "org.footwell.physics..",
              "org.footwell.vehicle.chain..")
          .should()
          .dependOnClassesThat()
          .belongToAnyOf(
              Run.class, Finding.class, FindingCode.class, FaultCode.class, Calculation.class);

  /** Whoever knows a run reads, judges and explains; what is worked out stands in models below. */
  @ArchTest
  static void classesThatKnowARunDoNoHigherMathematics(JavaClasses all) {
    assertEquals(Set.of(), HigherMathematics.whereARunIsKnown(all));
  }

  /** A calculation reads what was asked into numbers and parts; a model is told nothing else. */
  @ArchTest
  static void classesThatKnowARequestWorkNothingOut(JavaClasses all) {
    assertEquals(Set.of(), HigherMathematics.whereARequestIsKnown(all));
  }

  /** As it is run, Java has no data of languages: what asks for them would be right in tests alone. */
  @ArchTest
  static final ArchRule nobodyAsksJavaForALanguage =
      noClasses()
          .that()
          .doNotBelongToAnyOf(Marks.class)
          .should()
          .callMethod(DecimalFormatSymbols.class, "getInstance", Locale.class)
          .orShould()
          .accessClassesThat()
          .belongToAnyOf(
              NumberFormat.class, Collator.class, DateFormat.class, DateFormatSymbols.class);

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

  /** What a caller sends makes the service neither call anybody nor start anything. */
  @ArchTest
  static final ArchRule nothingCallsOut =
      noClasses()
          .should()
          .dependOnClassesThat()
          .belongToAnyOf(
              Socket.class,
              DatagramSocket.class,
              SocketChannel.class,
              URLConnection.class,
              HttpClient.class,
              ProcessBuilder.class);

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
      classes().that().implement(Calculation.class).should().haveOnlyFinalFields();

  /** Code that the build writes may; a row of many arguments elsewhere is mixed up unseen. */
  @ArchTest static final ArchRule longRowsOfArgumentsAreBuilt = longRowsOfArgumentsAreBuilt();

  private static final int MOST_ARGUMENTS = 8;

  static ArchRule longRowsOfArgumentsAreBuilt() {
    return noClasses()
        .that(
            describe(
                "are written by hand",
                type -> !built(type) && !type.isAssignableTo(RecordAccess.class)))
        .should()
        .callConstructorWhere(
            describe(
                "it has more than " + MOST_ARGUMENTS + " arguments",
                call -> call.getTarget().getRawParameterTypes().size() > MOST_ARGUMENTS));
  }

  /** Whether a class is the builder that {@code @Built} writes for a record. */
  private static boolean built(JavaClass type) {
    return type.tryGetMethod("build")
        .map(JavaMethod::getRawReturnType)
        .filter(JavaClass::isRecord)
        .filter(record -> type.getFullName().equals(builderOf(record)))
        .isPresent();
  }

  private static String builderOf(JavaClass record) {
    String inPackage = record.getFullName().substring(record.getPackageName().length() + 1);
    return record.getPackageName() + "." + inPackage.replace("$", "") + "Builder";
  }
}
