package org.footwell.measured.sum;

import static org.footwell.measured.sum.LoudspeakerSumFinding.CHANNELS_CANCEL;
import static org.footwell.measured.sum.LoudspeakerSumFinding.DELAY_AMBIGUOUS;
import static org.footwell.measured.sum.LoudspeakerSumFinding.DELAY_AT_END_OF_RANGE;
import static org.footwell.measured.sum.LoudspeakerSumFinding.DELAY_LOSES;
import static org.footwell.measured.sum.LoudspeakerSumFinding.LEVELS_APART;
import static org.footwell.measured.sum.LoudspeakerSumFinding.LOSS_REMAINS;
import static org.footwell.measured.sum.LoudspeakerSumFinding.POLARITY_LOSES;
import static org.footwell.measured.sum.LoudspeakerSumFinding.POSITIONS_SUM_DIFFERENTLY;
import static org.footwell.measured.sum.LoudspeakerSumFinding.SUM_NEAR_NOISE;

import java.util.List;
import org.footwell.calculation.Remark;
import org.footwell.calculation.Run;
import org.footwell.calculation.text.Phrase;
import org.footwell.measured.sum.LoudspeakerSumResult.Position;

/** What is remarked on. Thresholds are common practice without a source. */
final class LoudspeakerSumRemarks {

  /** Less is the same, dB. */
  static final double SAME_DB = 0.1;

  private static final double WORTH_DB = 0.5;

  /** 90 degrees, which odd-order filters have by design, lose 3.01 dB. */
  private static final double CANCEL_DB = 3.5;

  private static final double REMAINS_DB = 1;
  private static final double APART_DB = 6;
  private static final double NOISE_DB = 15;
  private static final double POSITIONS_DB = 3;
  private static final double AT_END = 0.999;

  private final LoudspeakerSumRequest q;
  private final Run run;
  private final String lower;
  private final String upper;

  LoudspeakerSumRemarks(LoudspeakerSumRequest q, Run run) {
    this.q = q;
    this.run = run;
    this.lower = q.channels().get(0).id();
    this.upper = q.channels().get(1).id();
  }

  void on(LoudspeakerSumResult r, List<PairOfResponses> positions) {
    if (-r.lossAtCrossoverDb() > CANCEL_DB) {
      run.find(CHANNELS_CANCEL)
          .at("/crossover_hz")
          .value(-r.lossAtCrossoverDb())
          .limit(CANCEL_DB)
          .with("frequency", q.crossoverHz())
          .own("lower", lower)
          .own("upper", upper);
    }
    if (Math.abs(r.levelDifferenceDb()) > APART_DB) {
      run.find(LEVELS_APART)
          .at("/crossover_hz")
          .value(Math.abs(r.levelDifferenceDb()))
          .limit(APART_DB)
          .with("frequency", q.crossoverHz())
          .own("louder", r.levelDifferenceDb() > 0 ? upper : lower)
          .own("softer", r.levelDifferenceDb() > 0 ? lower : upper);
    }
    setting(r);
    positions(r, positions);
  }

  private static Phrase andDelay(String name, double delay) {
    return Phrase.of(SumWords.AND_DELAY).own("name", name).with("delay", delay);
  }

  private void setting(LoudspeakerSumResult r) {
    boolean worth = r.best().lossDb() > r.asSet().lossDb() + WORTH_DB;
    if (worth) {
      boolean turn = r.best().polarity() < 0;
      double delay = Math.abs(r.best().delayMs());
      Remark remark =
          run.find(turn ? POLARITY_LOSES : DELAY_LOSES)
              .at("/channels")
              .value(hundredths(-r.asSet().lossDb()))
              .limit(hundredths(-r.best().lossDb()))
              .own("lower", lower)
              .own("upper", upper);
      if (turn) {
        remark.with("delay", r.delayed() == null ? Phrase.nothing() : andDelay(r.delayed(), delay));
      } else {
        remark.own("name", r.delayed()).with("delay", delay);
      }
    }
    if (-r.best().lossDb() > REMAINS_DB) {
      run.find(LOSS_REMAINS).at("/channels").value(-r.best().lossDb()).limit(REMAINS_DB);
    }
    if (r.otherPolarity().lossDb() > r.best().lossDb() - WORTH_DB) {
      run.find(DELAY_AMBIGUOUS)
          .at("/channels")
          .value(hundredths(-r.otherPolarity().lossDb()))
          .limit(hundredths(-r.best().lossDb()))
          .with("delay", r.otherPolarity().delayMs());
    }
    if (Math.abs(r.best().delayMs()) > AT_END * q.delayRangeMs()) {
      run.find(DELAY_AT_END_OF_RANGE)
          .at("/delay_range_ms")
          .value(r.best().delayMs())
          .limit(q.delayRangeMs());
    }
  }

  /** Less than a hundredth of a dB is nothing; the result has the digits. */
  private static double hundredths(double db) {
    return Math.round(100 * db) / 100.0;
  }

  private void positions(LoudspeakerSumResult r, List<PairOfResponses> positions) {
    double least = r.positions().stream().mapToDouble(Position::bestLossDb).min().orElseThrow();
    double most = r.positions().stream().mapToDouble(Position::bestLossDb).max().orElseThrow();
    if (most - least > POSITIONS_DB) {
      run.find(POSITIONS_SUM_DIFFERENTLY)
          .at("/microphones")
          .value(most - least)
          .limit(POSITIONS_DB);
    }
    for (int c = 0; c < 2; c++) {
      int channel = c;
      double above =
          positions.stream().mapToDouble(one -> one.aboveNoiseDb(channel)).min().orElseThrow();
      if (above < NOISE_DB) {
        run.find(SUM_NEAR_NOISE)
            .at("/channels/" + c)
            .value(above)
            .limit(NOISE_DB)
            .own("name", q.channels().get(c).id());
      }
    }
  }
}
