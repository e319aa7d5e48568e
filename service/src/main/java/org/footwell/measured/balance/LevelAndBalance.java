package org.footwell.measured.balance;

import static org.footwell.calculation.Source.DEFINITION;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.footwell.calculation.Calculation;
import org.footwell.calculation.Card;
import org.footwell.calculation.Formula;
import org.footwell.calculation.Run;
import org.footwell.calculation.Source;
import org.footwell.measured.response.Gate;
import org.footwell.measured.response.ImpulseResponses;
import org.footwell.measured.response.JudgedChannel;
import org.footwell.measured.response.MeasurementFault;
import org.footwell.measured.response.PairFault;
import org.footwell.measured.response.PositionPowers;
import org.footwell.parts.FrequencyFault;
import org.footwell.parts.LevelAt;
import org.footwell.parts.Safety;
import org.footwell.physics.Decibels;
import org.footwell.physics.ThirdOctaves;
import org.footwell.signal.ExponentialSweep;
import org.footwell.signal.PlayingBand;
import org.footwell.signal.Spectrum;
import org.footwell.signal.SweepDeconvolution;

/** Band levels of every channel, trims to a wanted curve, and left against right. */
public final class LevelAndBalance
    implements Calculation<LevelAndBalanceRequest, LevelAndBalanceResult> {

  private static final Formula.Of2 TRIM =
      Formula.of("trim_db", "min(D) − D", "dB", DEFINITION)
          .with("min(D)", "D", (least, own) -> least - own);
  private static final Formula.Of2 COST =
      Formula.of("headroom_cost_db", "10·lg(Σp/Σ(p·10^(trim/10)))", "dB", DEFINITION)
          .with("Σp", "Σ(p·10^(trim/10))", (all, left) -> Decibels.ofPower(all / left));

  private static final Card<LevelAndBalanceRequest, LevelAndBalanceResult> CARD =
      Card.of("level-and-balance", LevelAndBalanceRequest.class, LevelAndBalanceResult.class)
          .title("Levels and balance from recordings")
          .purpose(
              "How loud is every channel in third octaves at the listening position, how far must"
                  + " each be turned down to meet a wanted curve, how even are left and right, and"
                  + " what do the trims cost in headroom.")
          .example(BalanceExample.json())
          .sources(
              ThirdOctaves.IEC_61260_1,
              Spectrum.TRANSFORM,
              ExponentialSweep.FARINA,
              SweepDeconvolution.DIVISION,
              Gate.RESOLUTION,
              Source.COMMON_PRACTICE)
          .limits(
              "Levels are those of the recordings: they compare channels that were played and"
                  + " recorded with the same settings, and are no sound pressure levels.",
              "Bands are cut out of the spectrum with straight edges at the band limits of"
                  + " IEC 61260-1; real filters overlap a little.",
              "What the trims cost is counted with the same signal power in every third octave and"
                  + " powers added without regard to phase.",
              "Third octaves within half an octave of the ends of a sweep are left out: its fade makes"
                  + " them read low.",
              "Nothing is told below the inverse of the time the gate looks at.")
          .findings(BalanceFinding.values())
          .refusals(
              MeasurementFault.and(
                  PairFault.PAIR_OF_ONE,
                  BalanceFault.CHANNEL_BAND_EMPTY,
                  BalanceFault.CHANNEL_NOT_HEARD,
                  BalanceFault.CHANNEL_BEYOND_SWEEP,
                  FrequencyFault.RANGE_WITHOUT_POINTS))
          .cautions(Safety.HEARING)
          .build();

  @Override
  public Card<LevelAndBalanceRequest, LevelAndBalanceResult> card() {
    return CARD;
  }

  @Override
  public LevelAndBalanceResult compute(LevelAndBalanceRequest q, Run run) {
    List<BandLevels> all = all(q, JudgedBands.frequencies(q), run);
    BandLevels quietest =
        all.stream().min(Comparator.comparingDouble(BandLevels::overTargetDb)).orElseThrow();
    double least = quietest.overTargetDb();
    double[] trims =
        all.stream().mapToDouble(one -> run.apply(TRIM, least, one.overTargetDb())).toArray();
    List<LevelAndBalanceResult.ChannelLevel> channels = new ArrayList<>();
    List<LevelAndBalanceResult.Band> bands = new ArrayList<>();
    for (int c = 0; c < all.size(); c++) {
      channels.add(all.get(c).channel(trims[c], least));
      bands.addAll(all.get(c).bands(trims[c], least));
    }
    BalanceRemarks remarks = new BalanceRemarks(q, run);
    remarks.on(all, trims, quietest.id());
    double largest = 0;
    double limitHz = 0;
    for (int c = 0; c < trims.length; c++) {
      largest = Math.min(largest, trims[c]);
      limitHz = Math.max(limitHz, all.get(c).gateLimitHz());
    }
    return new LevelAndBalanceResult(
        channels,
        bands,
        new Pairs(all, trims, remarks).all(q.pairs()),
        quietest.id(),
        largest,
        cost(all, trims, run),
        limitHz,
        q.recordings().get(0).recording().rateHz());
  }

  private static List<BandLevels> all(LevelAndBalanceRequest q, double[] frequencies, Run run) {
    ImpulseResponses responses = q.responses(run);
    DoubleUnaryOperator shown = q.calibration() == null ? f -> 0 : LevelAt.curve(q.calibration());
    double[] calibration = Arrays.stream(frequencies).map(shown).toArray();
    double[] targets = Arrays.stream(frequencies).map(q.target().curve()).toArray();
    List<BandLevels> all = new ArrayList<>();
    for (int c = 0; c < q.channels().size(); c++) {
      JudgedChannel channel = q.channels().get(c);
      PositionPowers heard =
          PositionPowers.of(
              q.heard(channel.id()), q.gate(), responses, frequencies, 3, calibration, run);
      PlayingBand stated = BandLevels.within(channel, frequencies);
      PlayingBand plays = stated == null ? heard.band(frequencies, 3) : stated;
      if (plays == null) {
        run.refuse(BalanceFault.CHANNEL_NOT_HEARD).at("/channels/" + c).given(channel.id());
      } else if (heard.told(plays) == null) {
        run.refuse(BalanceFault.CHANNEL_BEYOND_SWEEP).at("/channels/" + c).given(channel.id());
      } else {
        all.add(new BandLevels(channel, frequencies, heard, targets, plays));
      }
    }
    run.requireNoFaults();
    return all;
  }

  private static double cost(List<BandLevels> all, double[] trims, Run run) {
    double before = 0;
    double after = 0;
    for (int c = 0; c < trims.length; c++) {
      double power = all.get(c).power();
      before += power;
      after += power * Decibels.toPower(trims[c]);
    }
    return run.apply(COST, before, after);
  }
}
