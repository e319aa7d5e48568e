package org.footwell.electrical.load;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.footwell.calculation.Check;
import org.footwell.calculation.CoreFault;
import org.footwell.calculation.Refusing;
import org.footwell.parts.VoiceCoil;

/** Coils alike are called by a number behind their name, which must be the name of no other. */
@Check.Of(
    value = {"*.name", "*.coil_count"},
    says = "No name of a coil is that of another with a number of several alike behind it.")
final class CoilNames implements Check<List<VoiceCoil>> {

  @Override
  public void check(List<VoiceCoil> coils, Refusing to) {
    Set<String> listed = new HashSet<>();
    Set<String> taken = new HashSet<>();
    for (int i = 0; i < coils.size(); i++) {
      // That two are listed under one name is told by the rule.
      if (coils.get(i).name() != null && listed.add(coils.get(i).name())) {
        for (String name : Coil.names(coils.get(i))) {
          if (!taken.add(name)) {
            to.refuse(CoreFault.DUPLICATE).at("/" + i + "/name").given(name);
          }
        }
      }
    }
  }
}
