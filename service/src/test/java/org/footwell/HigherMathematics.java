package org.footwell;

import com.tngtech.archunit.core.domain.JavaClass;
import java.util.Collection;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.footwell.calculation.Run;

/** Finds classes that know a run and do mathematics beyond comparing and rounding. */
final class HigherMathematics {

  /** What whoever reads and judges may do with numbers. */
  private static final Set<String> PLAIN =
      Set.of("abs", "min", "max", "round", "floor", "ceil", "signum");

  private static final Set<String> FUNCTIONS =
      Set.of(Math.class.getName(), StrictMath.class.getName());

  private static final String NUMERICS = "org.apache.commons.math3";

  private static final String ROOT = HigherMathematics.class.getPackageName() + ".";

  private HigherMathematics() {}

  /** Their names below the root, each with the classes inside it taken as one. */
  static Set<String> whereARunIsKnown(Collection<JavaClass> classes) {
    Set<String> found = outermost(classes, HigherMathematics::knowsARun);
    found.retainAll(outermost(classes, HigherMathematics::isDoneBy));
    return found;
  }

  private static Set<String> outermost(Collection<JavaClass> classes, Predicate<JavaClass> which) {
    return classes.stream()
        .filter(which)
        .map(type -> type.getFullName().substring(ROOT.length()).replaceFirst("\\$.*", ""))
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static boolean knowsARun(JavaClass type) {
    return dependsOn(type, name -> name.equals(Run.class.getName()));
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
