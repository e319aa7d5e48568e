package org.footwell.electrical.supply;

import org.footwell.calculation.Check;
import org.footwell.calculation.Refusing;
import org.footwell.parts.ReturnPath;

/** A current that comes back by cable does not meet the resistance of the body. */
@Check.Of(
    value = {"return_path", "body_ohm"},
    says = "body_ohm only where the body is the return path.")
final class BodyInLoop implements Check<SupplyCableRequest> {

  @Override
  public void check(SupplyCableRequest q, Refusing to) {
    if (q.returnPath() == ReturnPath.CABLE && q.bodyOhm() != null) {
      to.refuse(CableFault.BODY_NOT_IN_LOOP).at("/body_ohm").given(q.bodyOhm());
    }
  }
}
