package org.footwell.factory.clip;

import org.footwell.calculation.Check;
import org.footwell.calculation.CoreFault;
import org.footwell.calculation.Refusing;
import org.footwell.calculation.text.Allowed;
import org.footwell.factory.clip.ClipPointRequest.OutputLoad;

/** Open terminals have no load. */
@Check.Of(
    value = {"load_ohm", "terminals"},
    says = "load_ohm is left out where terminals is open.")
final class LoadAtTerminals implements Check<ClipPointRequest> {

  @Override
  public void check(ClipPointRequest q, Refusing to) {
    if (q.loadOhm() != null && q.terminals() == OutputLoad.OPEN) {
      to.refuse(CoreFault.NOT_ALLOWED)
          .at("/load_ohm")
          .given(q.loadOhm())
          .allowed(Allowed.leftOutWhere("terminals", OutputLoad.OPEN));
    }
  }
}
