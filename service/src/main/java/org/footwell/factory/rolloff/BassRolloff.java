package org.footwell.factory.rolloff;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.footwell.calculation.Calculation;
import org.footwell.calculation.Card;
import org.footwell.calculation.FaultCode;
import org.footwell.calculation.Run;
import org.footwell.calculation.Source;
import org.footwell.factory.rolloff.BassLimits.Cone;
import org.footwell.factory.rolloff.BassLimits.Headroom;
import org.footwell.factory.rolloff.BassLimits.Share;
import org.footwell.factory.rolloff.BassRolloffRequest.DriverLevel;
import org.footwell.factory.rolloff.BassRolloffResult.BandGain;
import org.footwell.factory.rolloff.BassRolloffResult.StepLoss;
import org.footwell.parts.Safety;
import org.footwell.physics.Piston;
import org.footwell.physics.ThirdOctaves;
import org.footwell.recording.RecordingFault;
import org.footwell.recording.Wav;
import org.footwell.signal.Spectrum;

/** Where a source takes bass away as the volume rises, and what gives it back. */
public final class BassRolloff implements Calculation<BassRolloffRequest, BassRolloffResult> {

  private static final Card<BassRolloffRequest, BassRolloffResult> CARD =
      Card.of("bass-rolloff", BassRolloffRequest.class, BassRolloffResult.class)
          .title("Bass that falls behind as the volume rises")
          .purpose(
              "From which volume step on does the bass of a source fall behind, by how much and"
                  + " below what frequency; what gain restores it at every step within amplifier"
                  + " and driver, and at which volume compensating must end.")
          .example(RolloffExample.json())
          .sources(
              ThirdOctaves.IEC_61260_1,
              Losses.NOISE,
              LowShelf.COOKBOOK,
              Piston.HALF_SPACE,
              Spectrum.TRANSFORM,
              Wav.RIFF,
              Source.COMMON_PRACTICE)
          .limits(
              "Bass is held against the reference range of the same step: a source that turns all"
                  + " down alike is not found.",
              "What falls behind with pink noise may fall behind less or more with music, if the"
                  + " source goes by the level of the bass and not by the volume step.",
              "Displacement takes the driver as a piston in half space whose level follows the"
                  + " voltage: below the resonance of its box it moves less than stated.",
              "A gain for each volume step needs a processor that knows the step; a fixed gain must"
                  + " be that of the highest step to be used.")
          .findings(RolloffFinding.values())
          .refusals(
              Stream.<FaultCode>concat(
                      Stream.of(RolloffFault.values()), Stream.of(RecordingFault.values()))
                  .toArray(FaultCode[]::new))
          .cautions(Safety.HEARING)
          .build();

  @Override
  public Card<BassRolloffRequest, BassRolloffResult> card() {
    return CARD;
  }

  @Override
  public BassRolloffResult compute(BassRolloffRequest q, Run run) {
    BandTable table = BandTableReader.read(q, run);
    int reference = q.referenceStep() == null ? 0 : table.indexOfStep(q.referenceStep());
    ReferenceRange range =
        ReferenceRange.of(table.bandsHz(), q.referenceFromHz(), q.referenceToHz());
    Losses losses = new Losses(table, reference, range, q.thresholdDb());
    BassLimits limits =
        new BassLimits(
            table, losses.bassBands(), q.mostGainDb(), headroom(q, table), cone(q, table));
    List<StepLoss> steps = new ArrayList<>();
    List<BandGain> bands = new ArrayList<>();
    List<Share> shares = new ArrayList<>();
    for (int s = 0; s < table.steps().size(); s++) {
      run.checkDeadline();
      List<Double> loss = losses.at(s);
      boolean changed = changed(losses, loss, q.thresholdDb());
      List<Double> gains = loss.stream().map(db -> changed ? db : (Double) 0.0).toList();
      Share share = limits.of(s, gains);
      shares.add(share);
      Double displacement =
          q.driver() == null ? null : (Double) limits.displacementMm(s, gains, share.share());
      steps.add(step(q, table, losses, s, share, displacement));
      for (int b = 0; b < gains.size(); b++) {
        double gain = gains.get(b);
        bands.add(
            new BandGain(
                table.steps().get(s),
                table.bandsHz().get(b),
                loss.get(b),
                gain > 0 ? share.share() * gain : gain));
      }
    }
    return RolloffRemarks.summary(q, table, losses, steps, shares, bands, run);
  }

  private static Headroom headroom(BassRolloffRequest q, BandTable table) {
    return q.headroom() == null
        ? null
        : new Headroom(table.indexOfStep(q.headroom().volumeStep()), q.headroom().headroomDb());
  }

  private static Cone cone(BassRolloffRequest q, BandTable table) {
    if (q.driver() == null) {
      return null;
    }
    DriverLevel known = q.driverLevel();
    return new Cone(
        q.driver().sdCm2(),
        q.driver().xmaxMm(),
        table.indexOfStep(known.volumeStep()),
        table.indexOfBand(known.frequencyHz()),
        known.levelDbSpl(),
        known.crestFactorDb());
  }

  /** Whether a step's bass is behind or ahead by the threshold and beyond chance. */
  private static boolean changed(Losses losses, List<Double> loss, double threshold) {
    double least = Math.max(threshold, losses.chanceDb(Losses.TOGETHER));
    double behind = Losses.mean(loss, Losses.worst(loss));
    double ahead = -Losses.mean(loss, Losses.worst(loss.stream().map(db -> -db).toList()));
    return behind >= least || ahead >= least;
  }

  private static StepLoss step(
      BassRolloffRequest q,
      BandTable table,
      Losses losses,
      int s,
      Share share,
      Double displacement) {
    List<Double> loss = losses.at(s);
    double worst = Losses.mean(loss, Losses.worst(loss));
    double chance = losses.chanceDb(Losses.TOGETHER);
    boolean behind = worst >= Math.max(q.thresholdDb(), chance);
    LowShelf shelf =
        changed(losses, loss, q.thresholdDb())
            ? LowShelf.fit(table.bandsHz().subList(0, loss.size()), loss, q.referenceFromHz())
            : null;
    double gain = shelf == null ? 0 : shelf.gainDb();
    return BassRolloffResultStepLossBuilder.builder()
        .volumeStep(table.steps().get(s))
        .referenceLevelDb(losses.middleDb(s))
        .lossDb(worst)
        .behind(behind)
        .belowHz(behind ? (Double) losses.belowHz(loss) : null)
        .shelfGainDb(gain)
        .shelfFrequencyHz(shelf == null ? null : (Double) shelf.frequencyHz())
        .shelfErrorDb(shelf == null ? null : (Double) shelf.errorDb())
        .allowedGainDb(gain > 0 ? share.share() * gain : gain)
        .heldBy(share.heldBy())
        .displacementMm(displacement)
        .uncertaintyDb(chance == 0 ? null : (Double) losses.chanceDb(1))
        .build();
  }
}
