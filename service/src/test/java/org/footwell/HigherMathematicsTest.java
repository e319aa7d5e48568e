package org.footwell;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.DoubleBinaryOperator;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.footwell.calculation.Run;
import org.junit.jupiter.api.Test;

/** That it is seen wherever it stands, and that nothing else is taken for it. */
class HigherMathematicsTest {

  private static final Set<String> FOUND = Set.of("HigherMathematicsTest");

  private static Set<String> in(Class<?>... classes) {
    return HigherMathematics.whereARunIsKnown(
        new ArrayList<>(new ClassFileImporter().importClasses(classes)));
  }

  record Calls(Run run) {
    double root(double number) {
      return Math.sqrt(number);
    }
  }

  record HasALambda(Run run) {
    static final DoubleUnaryOperator ROOT = number -> 2 * Math.sqrt(number);
  }

  record Refers(Run run) {
    static final DoubleBinaryOperator SUM = Math::hypot;
  }

  record Solves(Run run, BrentSolver solver) {}

  static final class TakesItAsAnArgument {
    static double root(double number, Run run) {
      run.checkDeadline();
      return StrictMath.cbrt(number);
    }
  }

  record Outer(Run run) {
    record Inner(double number) {
      double root() {
        return Math.sqrt(number);
      }
    }
  }

  record Compares(Run run) {
    double compared(double a, double b) {
      return Math.max(Math.abs(a), Math.floor(Math.min(a, Math.ceil(b)))) * Math.signum(a)
          + Math.round(Math.PI * b);
    }
  }

  record KnowsNoRun(double number) {
    double root() {
      return Math.sqrt(number);
    }
  }

  @Test
  void seenWhereverItStands() {
    for (Class<?> each :
        List.of(
            Calls.class, HasALambda.class, Refers.class, Solves.class, TakesItAsAnArgument.class)) {
      assertEquals(FOUND, in(each), each.getSimpleName());
    }
  }

  @Test
  void aClassInsideCountsAsTheOneAroundIt() {
    assertEquals(FOUND, in(Outer.class, Outer.Inner.class));
    assertEquals(Set.of(), in(Outer.class));
  }

  @Test
  void comparingAndRoundingIsForAll() {
    assertEquals(Set.of(), in(Compares.class));
  }

  @Test
  void whoKnowsNoRunMayDoIt() {
    assertEquals(Set.of(), in(KnowsNoRun.class));
  }
}
