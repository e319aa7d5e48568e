package org.footwell.acoustic.alignment;

import static org.footwell.acoustic.alignment.AlignmentFinding.CROSSOVER_OUT_OF_PHASE;
import static org.footwell.acoustic.alignment.AlignmentFinding.POLARITY_WOULD_MEND;

import java.util.ArrayList;
import java.util.List;
import org.footwell.acoustic.alignment.SeatDelaysRequest.PlacedChannel;
import org.footwell.calculation.Formula;
import org.footwell.calculation.Run;
import org.footwell.calculation.Source;
import org.footwell.parts.Crossover;
import org.footwell.physics.Decibels;

/** How two channels add at their crossover frequency, at each seat. */
final class CrossoverSums {

  /**
   * Loss that is remarked on, dB. Two Butterworth filters of odd order stand 90 degrees apart by
   * design, which is -3.01 dB: a little more is let pass so that rounding them is no fault.
   */
  private static final double REMARKABLE_DB = -3.5;

  /** A sum is never called quieter than this, dB: real nulls end long before. */
  private static final double DEEPEST_DB = -100;

  private static final Source TWO_SINES = Source.of("Sum of two equal sines, |1 + e^(jφ)|/2");

  /** Phase in degrees of a channel at f Hz: what arrives t ms late, through filters. */
  private static final Formula.Of4 PHASE =
      Formula.of("phase_deg", "φ_filters + φ_polarity − 0.36·f·t", "degrees", Source.DEFINITION)
          .with("φ_filters", "φ_polarity", "f", "t", (a, b, f, t) -> a + b - 0.36 * f * t);

  /** Difference of two phases in degrees, above −180 to 180. */
  static final Formula.Of2 PHASE_ERROR =
      Formula.of("phase_error_deg", "φ_lower − φ_upper, turned to ±180", "degrees", TWO_SINES)
          .with("φ_lower", "φ_upper", (lower, upper) -> wrapped(lower - upper));

  /** Sum of two equal sines φ degrees apart against both in phase, dB. */
  static final Formula.Of1 SUM_LOSS =
      Formula.of("sum_loss_db", "20·lg|cos(φ/2)|, no less than −100", "dB", TWO_SINES)
          .with("φ", CrossoverSums::loss);

  private final SeatDelaysRequest q;
  private final Layout layout;
  private final Run run;
  private final double speed;

  /** Chain delay and what is added, ms. */
  private final double[] settingMs;

  CrossoverSums(SeatDelaysRequest q, Layout layout, double speed, double[] settingMs, Run run) {
    this.q = q;
    this.layout = layout;
    this.speed = speed;
    this.settingMs = settingMs;
    this.run = run;
  }

  List<SeatDelaysResult.Crossover> all() {
    List<SeatDelaysResult.Crossover> sums = new ArrayList<>();
    Roster roster = new Roster(q);
    List<Crossover> crossovers = Roster.orNone(q.crossovers());
    for (int i = 0; i < crossovers.size(); i++) {
      Crossover crossover = crossovers.get(i);
      double[] errors =
          errors(
              roster.channel(crossover.lower()),
              roster.channel(crossover.upper()),
              crossover.frequencyHz());
      List<SeatDelaysResult.Crossover> here = new ArrayList<>();
      for (int seat = 0; seat < q.seats().size(); seat++) {
        here.add(atSeat(crossover, seat, errors));
      }
      remark(i, here, errors);
      sums.addAll(here);
    }
    return sums;
  }

  /** Phase errors by point, degrees. */
  private double[] errors(int lower, int upper, double frequency) {
    double[] errors = new double[layout.points()];
    double lowerFilters = filtersDeg(q.channels().get(lower), frequency);
    double upperFilters = filtersDeg(q.channels().get(upper), frequency);
    for (int p = 0; p < errors.length; p++) {
      errors[p] =
          run.apply(
              PHASE_ERROR,
              phase(lower, lowerFilters, frequency, p),
              phase(upper, upperFilters, frequency, p));
    }
    return errors;
  }

  private double phase(int channel, double filters, double frequency, int point) {
    double late = Spreads.TRAVEL.at(layout.distanceM[channel][point], speed) + settingMs[channel];
    double polarity = q.channels().get(channel).polarity() == 1 ? 0 : 180;
    return run.apply(PHASE, filters, polarity, frequency, late);
  }

  private static double filtersDeg(PlacedChannel channel, double frequency) {
    return (channel.highPass() == null ? 0 : channel.highPass().highPass().phaseDeg(frequency))
        + (channel.lowPass() == null ? 0 : channel.lowPass().lowPass().phaseDeg(frequency));
  }

  private SeatDelaysResult.Crossover atSeat(Crossover crossover, int seat, double[] errors) {
    double worst = 0;
    for (int p = 0; p < errors.length; p++) {
      if (layout.seat[p] == seat && Math.abs(errors[p]) > Math.abs(worst)) {
        worst = errors[p];
      }
    }
    return new SeatDelaysResult.Crossover(
        crossover.lower(),
        crossover.upper(),
        crossover.frequencyHz(),
        q.seats().get(seat).name(),
        worst,
        run.apply(SUM_LOSS, worst));
  }

  private void remark(int index, List<SeatDelaysResult.Crossover> atSeats, double[] errors) {
    SeatDelaysResult.Crossover worst = atSeats.get(0);
    for (SeatDelaysResult.Crossover sum : atSeats) {
      worst = sum.sumLossDb() < worst.sumLossDb() ? sum : worst;
    }
    if (worst.sumLossDb() >= REMARKABLE_DB) {
      return;
    }
    run.find(CROSSOVER_OUT_OF_PHASE)
        .at("/crossovers/" + index)
        .value(worst.sumLossDb())
        .limit(REMARKABLE_DB)
        .with("lost", -worst.sumLossDb())
        .with("frequency", worst.frequencyHz())
        .own("lower", worst.lower())
        .own("upper", worst.upper())
        .own("seat", worst.seat());
    double turned = 0;
    for (double error : errors) {
      turned = Math.min(turned, SUM_LOSS.at(wrapped(error + 180)));
    }
    if (turned >= REMARKABLE_DB) {
      run.find(POLARITY_WOULD_MEND)
          .at("/crossovers/" + index)
          .value(turned)
          .limit(REMARKABLE_DB)
          .with("lost", -turned)
          .with("frequency", worst.frequencyHz())
          .own("lower", worst.lower())
          .own("upper", worst.upper());
    }
  }

  private static double wrapped(double degrees) {
    double turned = Math.IEEEremainder(degrees, 360);
    return turned == -180 ? 180 : turned;
  }

  private static double loss(double degrees) {
    double cosine = Math.abs(Math.cos(Math.toRadians(degrees) / 2));
    return Math.max(DEEPEST_DB, Decibels.ofAmplitude(cosine));
  }
}
