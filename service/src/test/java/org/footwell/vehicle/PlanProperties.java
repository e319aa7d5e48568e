package org.footwell.vehicle;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** The laws of all plans on some drawn ones; {@link ManyPlansIT} takes thousands. */
class PlanProperties {

  @Property(tries = 100)
  void hold(@ForAll long seed) {
    PlanLaws.hold(seed);
  }
}
