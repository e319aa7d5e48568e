package org.footwell.acoustic.crossover;

import java.util.List;
import org.footwell.parts.Filter;

/**
 * Within what crossovers are looked for.
 *
 * @param kind of the filters, electrical
 * @param orders allowed, rising
 * @param beamingKa circumference over wavelength up to which the lower way's cone is used
 * @param spacingWavelengths largest distance of two ways' centres
 * @param subwooferHighestHz highest crossover of a subwoofer
 * @param processorLowestHz lowest that can be set
 * @param processorHighestHz highest that can be set
 */
record CrossoverScope(
    Filter.Kind kind,
    List<Integer> orders,
    double beamingKa,
    double spacingWavelengths,
    double subwooferHighestHz,
    double processorLowestHz,
    double processorHighestHz) {

  /** Where nothing else is said. */
  static final CrossoverScope USUAL =
      new CrossoverScope(Filter.Kind.LINKWITZ_RILEY, List.of(2, 4), 2, 1, 120, 20, 20_000);

  static CrossoverScope of(CrossoverPlanRequest q) {
    return new CrossoverScope(
        q.kind(),
        q.orders().stream().sorted().toList(),
        q.beamingKa(),
        q.spacingWavelengths(),
        q.subwooferHighestHz(),
        q.processorLowestHz(),
        q.processorHighestHz());
  }
}
