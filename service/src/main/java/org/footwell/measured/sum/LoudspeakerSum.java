package org.footwell.measured.sum;

import java.util.ArrayList;
import java.util.List;
import org.footwell.calculation.Calculation;
import org.footwell.calculation.Card;
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
import org.footwell.signal.ExponentialSweep;
import org.footwell.signal.PassBand;
import org.footwell.signal.Spectrum;
import org.footwell.signal.SweepDeconvolution;

/** Two measured channels around their crossover. */
public final class LoudspeakerSum
    implements Calculation<LoudspeakerSumRequest, LoudspeakerSumResult> {

  private static final Card<LoudspeakerSumRequest, LoudspeakerSumResult> CARD =
      Card.of("loudspeaker-sum", LoudspeakerSumRequest.class, LoudspeakerSumResult.class)
          .title("Sum of two measured loudspeakers")
          .purpose(
              "How do two channels add around their crossover as measured: their relative phase,"
                  + " which delay and polarity add best, and what loss is left.")
          .example(LoudspeakerSumExample.json())
          .sources(
              PairSum.LOSS.formula().source(),
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

  @Override
  public LoudspeakerSumResult compute(LoudspeakerSumRequest q, Run run) {
    double[] frequencies = PairSum.frequencies(q.crossoverHz(), q.octaves());
    ImpulseResponses responses = q.responses(run);
    withinRecording(frequencies, q, responses, run);
    List<PairOfResponses> positions = new ArrayList<>();
    for (MicrophonePosition position : q.microphones()) {
      run.checkDeadline();
      positions.add(
          PairOfResponses.of(
              response(q, 0, position, responses),
              response(q, 1, position, responses),
              responses.rateHz(),
              q.gate(),
              position.weight(),
              frequencies));
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

  private static double[] response(
      LoudspeakerSumRequest q, int c, MicrophonePosition position, ImpulseResponses responses) {
    return responses.of(q.take(q.channels().get(c).id(), position.id()).recording());
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
    PairSum sum = new PairSum(positions, frequencies);
    PairSumSearch search = new PairSumSearch(sum, run);
    Sum asSet = sum.trial(0, 1);
    Sum upright = search.best(1, q.delayRangeMs());
    Sum inverted = search.best(-1, q.delayRangeMs());
    boolean turn = inverted.lossDb() > upright.lossDb() + LoudspeakerSumRemarks.SAME_DB;
    Sum best = turn ? inverted : upright;
    Sum other = turn ? upright : inverted;
    int middle = frequencies.length / 2;
    double phase = PairSum.phaseDeg(positions, middle);
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
              PairSum.phaseDeg(one, middle),
              sum.lossDb(one, 0, 1),
              sum.lossDb(one, best.delayMs(), best.polarity())));
    }
    List<LoudspeakerSumResult.Point> points = new ArrayList<>();
    for (int i = 0; i < frequencies.length; i++) {
      points.add(sum.point(i, best));
    }
    LoudspeakerSumResult.Point crossing = points.get(middle);
    LoudspeakerSumResult result =
        LoudspeakerSumResultBuilder.builder()
            .bandFromHz(frequencies[0])
            .bandToHz(frequencies[frequencies.length - 1])
            .phaseDeg(phase)
            .lossAtCrossoverDb(run.apply(PairSum.LOSS, phase))
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
}
