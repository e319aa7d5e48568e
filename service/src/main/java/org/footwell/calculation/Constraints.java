package org.footwell.calculation;

import io.avaje.validation.ConstraintViolation;
import io.avaje.validation.Validator;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Checks a request against the constraints on its record and puts violations into words. */
final class Constraints {

  private final Validator validator = Validator.builder().build();

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
    for (ConstraintViolation violation : violations) {
      String pointer = pointer(violation.path());
      if (faulty.stream().anyMatch(known -> covers(known, pointer))) {
        continue;
      }
      Object given = valueAt(request, pointer);
      Node.Member member =
          Shape.of(request.getClass())
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

  private static Object valueAt(Record request, String pointer) {
    Object here = request;
    for (String part : pointer.substring(1).split("/", -1)) {
      if (here instanceof List<?> list) {
        here = list.get(Integer.parseInt(part));
      } else if (here != null) {
        Map<String, Node.Member> members = Reflection.group(here.getClass()).members();
        here = members.get(part).of(here);
      }
    }
    return here;
  }
}
