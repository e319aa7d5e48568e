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

/** How two channels add at their crossover frequency, at each seat. */
final class CrossoverSums {

  /**
   * Loss that is remarked on, dB. Two Butterworth filters of odd order stand 90 degrees apart by
   * design, which is -3.01 dB: a little more is let pass so that rounding them is no fault.
   */
  private static final double REMARKABLE_DB = -3.5;

  /** Phase in degrees of a channel at f Hz: what arrives t ms late, through filters. */
  private static final Formula.Of4 PHASE =
      Formula.of("phase_deg", "φ_filters + φ_polarity − 0.36·f·t", "degrees", Source.DEFINITION)
          .with("φ_filters", "φ_polarity", "f", "t", (a, b, f, t) -> a + b - 0.36 * f * t);

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
    Arrays.setAll(errors, p -> run.apply(EqualSines.PHASE_ERROR, lower[p], upper[p]));
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
        run.apply(EqualSines.SUM_LOSS, worst));
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
      turned = Math.min(turned, EqualSines.invertedDb(error));
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
}
