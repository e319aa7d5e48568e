package org.footwell.calculation;

import io.avaje.validation.ConstraintViolation;
import io.avaje.validation.Validator;
import java.util.List;
import java.util.Set;

/** Checks a request against the constraints on its record and puts violations into words. */
final class Constraints {

  private final Validator validator = Validator.builder().add(Bound::of).build();

  /**
   * Adds a fault for everything about the request that its record does not allow, save where a
   * fault is known already.
   */
  void check(Record request, Faults faults) {
    Set<ConstraintViolation> violations = validator.check(request);
    if (violations.isEmpty()) {
      return;
    }
    List<String> faulty = faults.list().stream().map(Fault::pointer).toList();
    Shape<?> shape = Shape.of(request.getClass());
    for (ConstraintViolation violation : violations) {
      if (faults.full()) {
        return;
      }
      String pointer = pointer(violation.path());
      if (faulty.stream().anyMatch(known -> covers(known, pointer))) {
        continue;
      }
      Object given = shape.valueAt(request, pointer);
      Node.Member member =
          shape
              .member(pointer)
              .orElseThrow(() -> new IllegalStateException("no such place: " + violation.path()));
      if (given == null) {
        faults.add(CoreFault.REQUIRED).at(pointer).allowed(member.node().allowed());
      } else {
        faults
            .add(CoreFault.NOT_ALLOWED)
            .at(pointer)
            .given(given instanceof List<?> list ? list.size() + " entries" : given)
            .allowed(member.node().allowed());
      }
    }
  }

  private static boolean covers(String known, String pointer) {
    return pointer.equals(known) || pointer.startsWith(known + "/");
  }

  /** {@code coils[0].ratedOhm} becomes {@code /coils/0/rated_ohm}. */
  private static String pointer(String path) {
    String slashed = path.replace("]", "").replaceAll("\\.?\\[", "/").replace('.', '/');
    return "/" + Names.snake(slashed);
  }
}
