package org.footwell.vehicle.faults;

import java.util.List;
import org.footwell.reference.OutsideCheck;
import org.footwell.reference.OutsideChecks;

/** How well an explanation fits, against the chi-square distribution of SciPy. */
class FitOutsideChecks extends OutsideChecks {

  @Override
  public List<OutsideCheck> checks() {
    return List.of(
        OutsideCheck.of("fault-finder", "fit_probability", "fit-probabilities.csv")
            .printed("probability")
            .computed(row -> ChiSquare.worse(row.number("sum"), (int) row.number("degrees")))
            .within(1e-9));
  }
}
