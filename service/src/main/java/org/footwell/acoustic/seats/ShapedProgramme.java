package org.footwell.acoustic.seats;

import java.util.ArrayList;
import java.util.List;
import org.footwell.acoustic.seats.SeatLevelsResult.Largest;
import org.footwell.acoustic.seats.SeatLevelsResult.SeatTotal;
import org.footwell.calculation.Run;
import org.footwell.physics.Decibels;
import org.footwell.physics.DriverOutput;
import org.footwell.physics.FrequencyWeighting;

/**
 * A programme whose bands sound together in the shape of the target at one seat. Everything in it
 * scales with one gain, so that what each limit leaves is a plain difference.
 */
final class ShapedProgramme {

  private final SeatLevelsRequest q;
  private final List<SourcesInBand> bands;
  private final List<Double> driveDb;
  private final List<SourceResponse> responses;
  private double overTarget = Double.POSITIVE_INFINITY;
  private int holding;
  private SourceLimit by;

  /**
   * Sets the drive of every band for the target.
   *
   * @param bands those with a target
   * @param driveDb what each needs for it at the reference seat, dB
   */
  ShapedProgramme(
      SeatLevelsRequest q,
      List<SourcesInBand> bands,
      List<Double> driveDb,
      List<SourceResponse> responses) {
    this.q = q;
    this.bands = bands;
    this.driveDb = driveDb;
    this.responses = responses;
  }

  Largest largest(int referenceSeat, double[] delayMs, Run run) {
    for (int i = 0; i < q.sources().size(); i++) {
      source(i, run);
    }
    List<SeatTotal> totals = new ArrayList<>();
    for (int seat = 0; seat < q.seats().size(); seat++) {
      totals.add(total(seat, delayMs));
    }
    return new Largest(
        q.seats().get(referenceSeat).name(),
        overTarget,
        q.sources().get(holding).name(),
        by,
        totals);
  }

  private void source(int index, Run run) {
    double power = 0;
    double movement = 0;
    for (int b = 0; b < bands.size(); b++) {
      SourceInBand band = bands.get(b).sources().get(index);
      double drive = driveDb.get(b);
      power += band.powerW() * Decibels.toPower(drive);
      if (band.xmaxDbSpl() != null) {
        movement += Decibels.toPower(band.levelDbSpl() + drive - band.xmaxDbSpl());
      }
    }
    double clean =
        run.apply(DriverOutput.MEAN_POWER, responses.get(index).amplifierW(), q.crestFactorDb());
    hold(run.apply(DriverOutput.POWER_LEFT, clean, power), index, SourceLimit.AMPLIFIER);
    Double continuous = q.sources().get(index).driver().continuousPowerW();
    if (continuous != null) {
      hold(run.apply(DriverOutput.POWER_LEFT, continuous, power), index, SourceLimit.THERMAL);
    }
    if (q.sources().get(index).driver().displacementKnown()) {
      hold(
          run.apply(DriverOutput.MOVEMENT_LEFT, q.crestFactorDb(), movement),
          index,
          SourceLimit.DISPLACEMENT);
    }
  }

  private void hold(double left, int source, SourceLimit limit) {
    if (left < overTarget) {
      overTarget = left;
      holding = source;
      by = limit;
    }
  }

  private SeatTotal total(int seat, double[] delayMs) {
    double power = 0;
    double weighted = 0;
    for (int b = 0; b < bands.size(); b++) {
      double level = bands.get(b).at(seat, driveDb.get(b) + overTarget, delayMs).countedDb();
      power += Decibels.toPower(level);
      weighted += Decibels.toPower(level + FrequencyWeighting.A.at(bands.get(b).frequency()));
    }
    return new SeatTotal(
        q.seats().get(seat).name(), Decibels.ofPower(power), Decibels.ofPower(weighted));
  }
}
