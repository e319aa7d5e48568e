package org.footwell.electrical.supply;

import org.footwell.calculation.Arithmetic;
import org.footwell.calculation.Built;
import org.footwell.calculation.Formula;
import org.footwell.calculation.Source;
import org.footwell.electrical.supply.SupplyCableResult.LimitedBy;
import org.footwell.electrical.supply.SupplyCableResult.SizedCable;
import org.footwell.physics.Conductors;
import org.footwell.physics.ConstantPower;
import org.footwell.physics.Electricity;

/**
 * One cable that wants a size: the main cable or a branch.
 *
 * @param pointer where it stands in the request; empty for the main cable
 * @param startV voltage at its start, V
 * @param currentA current, A, or null when the power is constant
 * @param inputW constant power drawn at its end, W, or null when the current is known
 * @param conductorM length of conductor in the loop, m
 * @param fixedOhm resistance of the loop that no size changes, ohm: body and contacts
 * @param permittedDropV drop permitted, V
 * @param loudest what it carries at the loudest
 * @param cable as it lies
 * @param surroundings factor on the ampacity for where it lies
 */
@Built
record Leg(
    String pointer,
    double startV,
    Double currentA,
    Double inputW,
    double conductorM,
    double fixedOhm,
    double permittedDropV,
    Loudest loudest,
    LaidCable cable,
    double surroundings,
    Fusing fusing) {

  /** How the fuses of main cable and branches are loaded. */
  record Fusing(double loading, double heatFactor) {}

  private static final Formula.Of2 LOOP =
      Formula.of("loop_ohm", "Rc + Rf", "ohm", ConstantPower.KIRCHHOFF)
          .with("Rc", "Rf", Double::sum);
  private static final Formula.Of2 DROP =
      Formula.of("drop_v", "I·R", "V", Source.of("Ohm's law")).with("I", "R", (i, r) -> i * r);
  private static final Formula.Of2 END =
      Formula.of("end_v", "U − Ud", "V", ConstantPower.KIRCHHOFF)
          .with("U", "Ud", (u, drop) -> u - drop);
  private static final Formula.Of3 WORST_CURRENT =
      Formula.of("worst_current_a", "P/(U − Ud)", "A", ConstantPower.KIRCHHOFF)
          .with("P", "U", "Ud", (p, u, drop) -> p / (u - drop));

  /** Sums and comparisons may differ from the decimal ones in the last binary digits. */
  private static final double ROUNDING = 1e-9;

  /** Current to expect at most, A: that at the lowest voltage the permitted drop leaves. */
  double worstCurrent(Arithmetic arithmetic) {
    return currentA != null
        ? currentA
        : arithmetic.apply(WORST_CURRENT, inputW, startV, permittedDropV);
  }

  /** Current in A through so many ohms; NaN if the constant power cannot pass them. */
  double current(double loopOhm) {
    return currentA != null ? currentA : ConstantPower.CURRENT.at(inputW, startV, loopOhm);
  }

  /** Whether more than the permitted drop is lost in so many ohms, or the power cannot pass. */
  boolean dropsTooMuch(double loopOhm) {
    return !(current(loopOhm) * loopOhm <= permittedDropV * (1 + ROUNDING));
  }

  /** Resistance of the whole loop in ohm with conductors of so many mm². */
  double loopOhm(double areaMm2) {
    double perKm = Conductors.CLASS_5_OHM_PER_KM.at(areaMm2) / cable.conductivity();
    return Conductors.CONDUCTOR_OHM.at(conductorM, perKm, cable.conductorC()) + fixedOhm;
  }

  /** What conductors of so many mm² may carry for long, A. */
  double ampacityA(double areaMm2) {
    return Ampacity.CORRECTED.at(
        Ampacity.TABLE.at(areaMm2, cable.insulationC()), surroundings, cable.conductivity());
  }

  /** Why conductors of so many mm² do not do, what is worse first; null if they do. */
  LimitedBy limit(double areaMm2) {
    double loop = loopOhm(areaMm2);
    double current = current(loop);
    double ampacity = ampacityA(areaMm2);
    if (Double.isNaN(current)) {
      return LimitedBy.DROP;
    }
    if (current > ampacity * (1 + ROUNDING)) {
      return LimitedBy.AMPACITY;
    }
    if (fuse(current, ampacity) == null) {
      return LimitedBy.FUSE;
    }
    return dropsTooMuch(loop) ? LimitedBy.DROP : null;
  }

  /** Everything about one size that lets the load's power pass. */
  SizedCable sized(double areaMm2, String awg, LimitedBy limitedBy, Arithmetic arithmetic) {
    double table = arithmetic.apply(Conductors.CLASS_5_OHM_PER_KM, areaMm2);
    double perKm = arithmetic.apply(Conductors.OF_CONDUCTIVITY, table, cable.conductivity());
    double conductors =
        arithmetic.apply(Conductors.CONDUCTOR_OHM, conductorM, perKm, cable.conductorC());
    double loop = arithmetic.apply(LOOP, conductors, fixedOhm);
    double current =
        currentA != null ? currentA : arithmetic.apply(ConstantPower.CURRENT, inputW, startV, loop);
    double drop = arithmetic.apply(DROP, current, loop);
    double ampacity =
        arithmetic.apply(
            Ampacity.CORRECTED,
            arithmetic.apply(Ampacity.TABLE, areaMm2, cable.insulationC()),
            surroundings,
            cable.conductivity());
    arithmetic.apply(Fuse.LEAST_RATING, current, fusing.loading(), fusing.heatFactor());
    if (loudest.lastingA() != null) {
      arithmetic.apply(Fuse.LEAST_FOR_SINE, loudest.lastingA(), fusing.heatFactor());
    }
    Fuse fuse = fuse(current, ampacity);
    return SupplyCableResultSizedCableBuilder.builder()
        .areaMm2(areaMm2)
        .awg(awg)
        .cableOhm(conductors)
        .loopOhm(loop)
        .currentA(current)
        .dropV(drop)
        .dropPercent(100 * drop / startV)
        .lossW(arithmetic.apply(Electricity.POWER_OF_CURRENT, current, loop))
        .endV(arithmetic.apply(END, startV, drop))
        .ampacityA(ampacity)
        .fuseA(fuse == null ? null : fuse.ratingA())
        .fuseSeries(fuse == null ? null : fuse.series())
        .fuseLeastA(leastFuse(current))
        .fuseLargestA(Fuse.largestUpTo(ampacity))
        .limitedBy(limitedBy)
        .build();
  }

  /** What the fuse must be rated at least, A: for the current, and for a sine that is to last. */
  double leastFuse(double current) {
    double least = Fuse.LEAST_RATING.at(current, fusing.loading(), fusing.heatFactor());
    return loudest.lastingA() == null
        ? least
        : Math.max(least, Fuse.LEAST_FOR_SINE.at(loudest.lastingA(), fusing.heatFactor()));
  }

  private Fuse fuse(double current, double ampacity) {
    return Fuse.between(leastFuse(current), ampacity);
  }
}
