package org.footwell.acoustic.alignment;

import static org.footwell.acoustic.alignment.AlignmentFinding.CROSSOVER_OUT_OF_PHASE;
import static org.footwell.acoustic.alignment.AlignmentFinding.POLARITY_WOULD_MEND;

import java.util.ArrayList;
import java.util.Arrays;
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
  private final Crossovers crossovers;
  private final Layout layout;
  private final Run run;

  /** When each channel is heard at each point with its setting, ms. */
  private final double[][] heardMs;

  CrossoverSums(SeatDelaysRequest q, Layout layout, double[][] heardMs, Run run) {
    this.q = q;
    this.crossovers = new Crossovers(q);
    this.layout = layout;
    this.heardMs = heardMs;
    this.run = run;
  }

  /** Sums at each seat, with what there is to say of them beyond the matches. */
  List<SeatDelaysResult.Crossover> all(BassMatches matches) {
    List<SeatDelaysResult.Crossover> sums = new ArrayList<>();
    for (int i = 0; i < crossovers.all().size(); i++) {
      double[] errors = errors(i);
      List<SeatDelaysResult.Crossover> here = new ArrayList<>();
      for (int seat = 0; seat < q.seats().size(); seat++) {
        here.add(atSeat(crossovers.all().get(i), seat, errors));
      }
      remark(i, here, errors, matches.settlesPolarityOf(i));
      sums.addAll(here);
    }
    return sums;
  }

  /** Phase errors by point, degrees. */
  private double[] errors(int crossover) {
    double frequency = crossovers.all().get(crossover).frequencyHz();
    double[] lower = phases(crossovers.lower(crossover), frequency);
    double[] upper = phases(crossovers.upper(crossover), frequency);
    double[] errors = new double[layout.points()];
    Arrays.setAll(errors, p -> run.apply(PHASE_ERROR, lower[p], upper[p]));
    return errors;
  }

  private double[] phases(int channel, double frequency) {
    PlacedChannel placed = q.channels().get(channel);
    double filters = new HeardChannel(placed).filtersDeg(frequency);
    double polarity = placed.polarity() == 1 ? 0 : 180;
    return Arrays.stream(heardMs[channel])
        .map(late -> run.apply(PHASE, filters, polarity, frequency, late))
        .toArray();
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

  private void remark(
      int index, List<SeatDelaysResult.Crossover> atSeats, double[] errors, boolean settled) {
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
    if (turned >= REMARKABLE_DB && !settled) {
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
    return Math.max(BothSides.DEEPEST_DB, Decibels.ofAmplitude(cosine));
  }
}
