package org.footwell.calculation;

import java.util.List;
import org.footwell.calculation.text.Allowed;
import org.footwell.calculation.text.Given;

/** Takes what a request, or a part of it, is refused for. */
@FunctionalInterface
public interface Refusing {

  /** Adds a fault; the remark returned takes what it is about, its places from that part. */
  Remark refuse(FaultCode code);

  /** Refuses unless exactly one of two is given, each after its name. */
  default void exactlyOneOf(
      String pointer, String name, Object given, String otherName, Object otherGiven) {
    if ((given == null) == (otherGiven == null)) {
      refuse(CoreFault.EXACTLY_ONE_OF)
          .at(pointer)
          .given(given == null ? Given.NONE_OF_THEM : Given.MORE_THAN_ONE)
          .allowed(Allowed.fields(List.of(name, otherName)));
    }
  }

  /** Takes what is told elsewhere. */
  static Refusing unheard() {
    return new Faults()::add;
  }
}
