package org.footwell.vehicle.faults;

import java.util.List;
import java.util.stream.IntStream;
import org.footwell.parts.plan.VehiclePlan;

/**
 * A vehicle with no, one or two faults, held against what was measured.
 *
 * @param faults what is wrong
 * @param figures of each of them
 * @param occam logarithm of what is lost by figures that had to be fitted, of each of them
 * @param plan with the faults that a plan can have
 * @param parts its channels
 * @param jointOhm resistance more in the supply of each amplifier
 * @param predicted all figures, scaled
 * @param square sum of the squares of their differences from what was measured
 */
@SuppressWarnings("ArrayRecordComponent") // made for every fault, never compared
record Tested(
    List<VehicleFault> faults,
    List<Double> figures,
    List<Double> occam,
    VehiclePlan plan,
    List<ChannelPart> parts,
    double[] jointOhm,
    double[] predicted,
    double square) {

  /** Logarithm of the likelihood, figures that were fitted integrated out. */
  double evidence() {
    return -square / 2 + occam.stream().mapToDouble(d -> d).sum();
  }

  /**
   * Logarithm of what it is worth against nothing wrong.
   *
   * @param share of the weight of a kind that a fault of it was worth before
   */
  double worth(double share) {
    double before = 0;
    for (VehicleFault fault : faults) {
      before += Math.log(share * fault.kind().weight());
    }
    return before + evidence();
  }

  /** RMS of how far figures are off; one that was fitted counts as one more, off by its error. */
  double misfit(int count) {
    return count == 0 ? 0 : Math.sqrt((square + fitted()) / count);
  }

  /** How many figures of it were fitted. */
  int fitted() {
    return (int) faults.stream().filter(fault -> fault.range().continuous()).count();
  }

  boolean none() {
    return faults.isEmpty();
  }

  /** Its faults as they are answered. */
  List<FaultLine> lines(VehiclePlan planned) {
    return IntStream.range(0, faults.size())
        .mapToObj(i -> faults.get(i).line(planned, figures.get(i)))
        .toList();
  }
}
