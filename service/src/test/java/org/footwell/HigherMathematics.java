package org.footwell;

import com.tngtech.archunit.core.domain.JavaClass;
import java.util.Collection;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.footwell.calculation.Formula;
import org.footwell.calculation.Run;

/** Finds classes that work something out, though they know a run or what was asked. */
final class HigherMathematics {

  /** What whoever reads and judges may do with numbers: compare, round and count. */
  private static final Set<String> PLAIN =
      Set.of("abs", "min", "max", "round", "floor", "ceil", "signum", "multiplyExact");

  private static final Set<String> FUNCTIONS =
      Set.of(Math.class.getName(), StrictMath.class.getName());

  private static final String NUMERICS = "org.apache.commons.math3";

  private static final String FORMULA = Formula.class.getName();

  private static final String ROOT = HigherMathematics.class.getPackageName() + ".";

  private HigherMathematics() {}

  /** Their names below the root, each with the classes inside it taken as one. */
  static Set<String> whereARunIsKnown(Collection<JavaClass> classes) {
    Set<String> found = outermost(classes, HigherMathematics::knowsARun);
    found.retainAll(outermost(classes, HigherMathematics::isDoneBy));
    return found;
  }

  /**
   * Models that know a request: what does higher mathematics, and what has a formula of its own but
   * no run. With a run it belongs to the calculation, which reads the request and asks.
   */
  static Set<String> whereARequestIsKnown(Collection<JavaClass> classes) {
    Set<String> found = outermost(classes, HigherMathematics::hasAFormula);
    found.removeAll(outermost(classes, HigherMathematics::knowsARun));
    found.addAll(outermost(classes, HigherMathematics::isDoneBy));
    found.retainAll(outermost(classes, HigherMathematics::knowsARequest));
    return found;
  }

  private static Set<String> outermost(Collection<JavaClass> classes, Predicate<JavaClass> which) {
    return classes.stream()
        .filter(which)
        .map(type -> outermost(type.getFullName()).substring(ROOT.length()))
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static String outermost(String name) {
    return name.replaceFirst("\\$.*", "");
  }

  private static boolean knowsARun(JavaClass type) {
    return dependsOn(type, name -> name.equals(Run.class.getName()));
  }

  private static boolean knowsARequest(JavaClass type) {
    return isOfARequest(type.getFullName()) || dependsOn(type, HigherMathematics::isOfARequest);
  }

  /** A request, or a record or choice within one. */
  private static boolean isOfARequest(String name) {
    return name.startsWith(ROOT) && outermost(name).endsWith("Request");
  }

  private static boolean hasAFormula(JavaClass type) {
    return type.getFields().stream()
        .anyMatch(field -> outermost(field.getRawType().getFullName()).equals(FORMULA));
  }

  private static boolean isDoneBy(JavaClass type) {
    return dependsOn(type, name -> name.startsWith(NUMERICS))
        || type.getAccessesFromSelf().stream()
            .anyMatch(
                access ->
                    FUNCTIONS.contains(access.getTargetOwner().getFullName())
                        && !PLAIN.contains(access.getName()));
  }

  private static boolean dependsOn(JavaClass type, Predicate<String> name) {
    return type.getDirectDependenciesFromSelf().stream()
        .anyMatch(dependency -> name.test(dependency.getTargetClass().getFullName()));
  }
}
