package org.footwell.measured.sum;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.footwell.calculation.Calculation;
import org.footwell.calculation.Card;
import org.footwell.calculation.Formula;
import org.footwell.calculation.Run;
import org.footwell.calculation.Source;
import org.footwell.calculation.text.Allowed;
import org.footwell.measured.response.Gate;
import org.footwell.measured.response.ImpulseResponses;
import org.footwell.measured.response.MeasurementFault;
import org.footwell.measured.response.MicrophonePosition;
import org.footwell.measured.response.TakeRules;
import org.footwell.measured.sum.LoudspeakerSumResult.Sum;
import org.footwell.parts.Safety;
import org.footwell.physics.Decibels;
import org.footwell.physics.Phasor;
import org.footwell.signal.ExponentialSweep;
import org.footwell.signal.PassBand;
import org.footwell.signal.Response;
import org.footwell.signal.Spectrum;
import org.footwell.signal.SweepDeconvolution;

/** Two measured channels around their crossover. */
public final class LoudspeakerSum
    implements Calculation<LoudspeakerSumRequest, LoudspeakerSumResult> {

  private static final int PER_OCTAVE = 24;

  /** Loss of two equal sines apart by φ degrees, against both in phase; 0 or less. */
  static final Formula.Of1 LOSS =
      Formula.of(
              "sum_loss_db",
              "20·lg|cos(φ/2)|, no less than −100",
              "dB",
              Source.of("Sum of two sines of one frequency"))
          .with("φ", LoudspeakerSum::loss);

  private static final Card<LoudspeakerSumRequest, LoudspeakerSumResult> CARD =
      Card.of("loudspeaker-sum", LoudspeakerSumRequest.class, LoudspeakerSumResult.class)
          .title("Sum of two measured loudspeakers")
          .purpose(
              "How do two channels add around their crossover as measured: their relative phase,"
                  + " which delay and polarity add best, and what loss is left.")
          .example(LoudspeakerSumExample.json())
          .sources(
              LOSS.formula().source(),
              Spectrum.TRANSFORM,
              ExponentialSweep.FARINA,
              SweepDeconvolution.DIVISION,
              Gate.RESOLUTION,
              Source.COMMON_PRACTICE)
          .limits(
              "Phases are compared between recordings: all must start at the same moment of"
                  + " playback, to the sample, with the microphone at the same place.",
              "The best sum is that of power over the band; it says nothing of arrival times beyond"
                  + " the range of delays tried.",
              "Reflections within the gate are part of what adds.")
          .findings(LoudspeakerSumFinding.values())
          .refusals(MeasurementFault.and(LoudspeakerSumFault.values()))
          .cautions(Safety.HEARING)
          .build();

  @Override
  public Card<LoudspeakerSumRequest, LoudspeakerSumResult> card() {
    return CARD;
  }

  private static double loss(double degrees) {
    double cosine = Math.abs(Math.cos(Math.toRadians(degrees) / 2));
    return Math.max(PairSumSearch.DEEPEST_DB, Decibels.ofAmplitude(cosine));
  }

  @Override
  public LoudspeakerSumResult compute(LoudspeakerSumRequest q, Run run) {
    double[] frequencies = frequencies(q);
    ImpulseResponses responses = q.responses();
    withinRecording(frequencies, q, responses, run);
    List<PairOfResponses> positions = new ArrayList<>();
    for (MicrophonePosition position : q.microphones()) {
      positions.add(PairOfResponses.of(q, position, responses, frequencies, run));
    }
    double limitHz =
        run.apply(
            Gate.LIMIT,
            positions.stream().mapToDouble(PairOfResponses::lengthS).min().orElseThrow());
    if (limitHz > frequencies[0]) {
      run.refuse(LoudspeakerSumFault.CROSSOVER_BELOW_GATE)
          .at("/gate")
          .given(frequencies[0] + " Hz")
          .allowed(Allowed.only(limitHz + " Hz"));
      throw run.refused();
    }
    return result(q, frequencies, positions, limitHz, run);
  }

  /** Odd in number, the crossover in the middle. */
  private static double[] frequencies(LoudspeakerSumRequest q) {
    int half = Math.max(2, (int) Math.round(q.octaves() * PER_OCTAVE));
    return IntStream.rangeClosed(-half, half)
        .mapToDouble(i -> q.crossoverHz() * Math.pow(2, q.octaves() * i / half))
        .toArray();
  }

  private static void withinRecording(
      double[] frequencies, LoudspeakerSumRequest q, ImpulseResponses responses, Run run) {
    PassBand sweep = responses.range();
    double from = sweep == null ? 0 : sweep.lowHz();
    double to = TakeRules.USABLE * responses.rateHz() / 2;
    to = sweep == null ? to : Math.min(to, sweep.highHz());
    if (frequencies[0] < from || frequencies[frequencies.length - 1] > to) {
      run.refuse(LoudspeakerSumFault.CROSSOVER_BEYOND_RECORDING)
          .at("/crossover_hz")
          .given(q.crossoverHz() + " Hz")
          .allowed(Allowed.between(from, to, "Hz"));
      throw run.refused();
    }
  }

  private static LoudspeakerSumResult result(
      LoudspeakerSumRequest q,
      double[] frequencies,
      List<PairOfResponses> positions,
      double limitHz,
      Run run) {
    PairSumSearch search = new PairSumSearch(positions, frequencies, run);
    Sum asSet = search.trial(0, 1);
    Sum upright = search.best(1, q.delayRangeMs());
    Sum inverted = search.best(-1, q.delayRangeMs());
    boolean turn = inverted.lossDb() > upright.lossDb() + LoudspeakerSumRemarks.SAME_DB;
    Sum best = turn ? inverted : upright;
    Sum other = turn ? upright : inverted;
    int middle = frequencies.length / 2;
    double phase = cross(positions, middle).phaseDeg();
    String delayed = null;
    if (best.delayMs() != 0) {
      delayed = q.channels().get(best.delayMs() > 0 ? 1 : 0).id();
    }
    List<LoudspeakerSumResult.Position> places = new ArrayList<>();
    for (int m = 0; m < positions.size(); m++) {
      List<PairOfResponses> one = List.of(positions.get(m));
      places.add(
          new LoudspeakerSumResult.Position(
              q.microphones().get(m).id(),
              cross(one, middle).phaseDeg(),
              search.lossDb(one, 0, 1),
              search.lossDb(one, best.delayMs(), best.polarity())));
    }
    List<LoudspeakerSumResult.Point> points = new ArrayList<>();
    for (int i = 0; i < frequencies.length; i++) {
      points.add(point(frequencies[i], i, positions, best));
    }
    LoudspeakerSumResult.Point crossing = points.get(middle);
    LoudspeakerSumResult result =
        LoudspeakerSumResultBuilder.builder()
            .bandFromHz(frequencies[0])
            .bandToHz(frequencies[frequencies.length - 1])
            .phaseDeg(phase)
            .lossAtCrossoverDb(run.apply(LOSS, phase))
            .levelDifferenceDb(crossing.upperDb() - crossing.lowerDb())
            .asSet(asSet)
            .best(best)
            .otherPolarity(other)
            .delayed(delayed)
            .positions(places)
            .points(points)
            .gateLimitHz(limitHz)
            .build();
    new LoudspeakerSumRemarks(q, run).on(result, positions);
    return result;
  }

  private static Phasor cross(List<PairOfResponses> positions, int i) {
    Phasor sum = new Phasor(0, 0);
    for (PairOfResponses one : positions) {
      sum = sum.plus(one.cross(i).times(one.weight()));
    }
    return sum;
  }

  private static LoudspeakerSumResult.Point point(
      double f, int i, List<PairOfResponses> positions, Sum best) {
    double turn = -2 * Math.PI * f * best.delayMs() / 1000;
    double weights = 0;
    double[] powers = new double[5];
    for (PairOfResponses one : positions) {
      double w = one.weight();
      weights += w;
      powers[0] += w * one.lowerPower(i);
      powers[1] += w * one.upperPower(i);
      powers[2] += w * one.sumPower(i, 1, 0);
      powers[3] += w * one.sumPower(i, best.polarity(), turn);
      powers[4] += w * one.inPhasePower(i);
    }
    double[] levels = new double[powers.length];
    for (int k = 0; k < levels.length; k++) {
      levels[k] = Response.levelDb(Math.max(0, powers[k] / weights));
    }
    return new LoudspeakerSumResult.Point(
        f, levels[0], levels[1], cross(positions, i).phaseDeg(), levels[2], levels[3], levels[4]);
  }
}
