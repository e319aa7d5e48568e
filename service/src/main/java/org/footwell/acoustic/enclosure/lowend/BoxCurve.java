package org.footwell.acoustic.enclosure.lowend;

import java.util.ArrayList;
import java.util.List;
import org.footwell.acoustic.enclosure.lowend.BoxPoint.Limit;
import org.footwell.acoustic.enclosure.radiator.CabinCurve;
import org.footwell.calculation.Run;
import org.footwell.loudspeaker.Radiator;
import org.footwell.loudspeaker.Radiator.State;
import org.footwell.physics.Decibels;
import org.footwell.physics.Electricity;

/** The points of a curve: a driver in its box at the stated drive, its limits and the cabin. */
public final class BoxCurve {

  private final Radiator radiator;
  private final boolean vented;
  private final double voltage;
  private final double gain;
  private final Double xmax;
  private final Double thermalGain;
  private final CabinCurve cabin;

  /**
   * At a voltage in V.
   *
   * @param cabin what the vehicle adds, or null
   */
  public BoxCurve(
      PlayedBox q, Radiator radiator, boolean vented, double voltage, CabinCurve cabin) {
    this.radiator = radiator;
    this.vented = vented;
    this.voltage = voltage;
    this.cabin = cabin;
    gain = Decibels.ofAmplitude(voltage);
    xmax = q.driver().xmaxMm();
    Double continuous = q.driver().continuousPowerW();
    thermalGain =
        continuous == null
            ? null
            : Decibels.ofAmplitude(Electricity.VOLTAGE.at(continuous, q.driver().ratedOhm()));
  }

  /** Its points at frequencies in Hz. */
  public List<BoxPoint> points(double[] frequencies, Run run) {
    run.checkDeadline();
    List<BoxPoint> points = new ArrayList<>(frequencies.length);
    for (double f : frequencies) {
      points.add(point(f));
    }
    return points;
  }

  private BoxPoint point(double f) {
    State s = radiator.at(f);
    double level = s.levelDbSpl() + gain;
    double displacement = s.displacementMm() * voltage;
    Double byDisplacement = xmax == null ? null : level + Decibels.ofAmplitude(xmax / displacement);
    Double byHeat = thermalGain == null ? null : s.levelDbSpl() - s.filterDb() + thermalGain;
    boolean both = byDisplacement != null && byHeat != null;
    boolean heatFirst = both && byHeat < byDisplacement;
    Double cabinGain = cabin == null ? null : cabin.gainDb(f);
    Double sealedGain = cabin == null ? null : cabin.sealedGainDb(f);
    return BoxPointBuilder.builder()
        .frequencyHz(f)
        .levelDbSpl(level)
        .phaseDeg(s.phaseDeg())
        .groupDelayMs(s.groupDelayMs())
        .displacementMm(displacement)
        .portVelocityMPerS(vented ? s.portVelocity() * voltage : null)
        .displacementLimitedDbSpl(byDisplacement)
        .thermallyLimitedDbSpl(byHeat)
        .maxLevelDbSpl(both ? Math.min(byDisplacement, byHeat) : null)
        .limitedBy(both ? (heatFirst ? Limit.THERMAL : Limit.DISPLACEMENT) : null)
        .cabinGainDb(cabinGain)
        .cabinLevelDbSpl(cabinGain == null ? null : level + cabinGain)
        .sealedCabinLevelDbSpl(sealedGain == null ? null : level + sealedGain)
        .build();
  }
}
