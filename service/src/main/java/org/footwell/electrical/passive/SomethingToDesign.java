package org.footwell.electrical.passive;

import static org.footwell.electrical.passive.NetworkFault.NOTHING_TO_DESIGN;

import java.util.List;
import org.footwell.calculation.Check;
import org.footwell.calculation.Refusing;
import org.footwell.calculation.text.Allowed;

/** A filter does something. */
@Check.Of(
    value = {"high_pass", "low_pass", "pad_db", "compensate"},
    says = "At least one of high_pass, low_pass, pad_db and compensate.")
final class SomethingToDesign implements Check<PassiveFilterRequest> {

  @Override
  public void check(PassiveFilterRequest q, Refusing to) {
    if (q.highPass() == null && q.lowPass() == null && q.padDb() == null && !q.compensate()) {
      to.refuse(NOTHING_TO_DESIGN)
          .allowed(Allowed.fields(List.of("high_pass", "low_pass", "pad_db", "compensate")));
    }
  }
}
