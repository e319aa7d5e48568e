package org.footwell.electrical.gain;

import java.util.ArrayList;
import java.util.List;
import org.footwell.calculation.Run;
import org.footwell.calculation.text.Phrase;
import org.footwell.electrical.gain.Chain.Link;

/** What is said about the outcome. */
final class GainRules {

  /** Smaller differences are rounding. */
  static final double TOLERANCE_DB = 0.01;

  /** More overlap than this is unusual: common practice. */
  private static final double USUAL_OVERLAP_DB = 10;

  /** Below this ratio of full output to noise a chain is usually heard to hiss: common practice. */
  private static final double QUIET_CHAIN_DB = 80;

  /** So much more input a stage should be able to take before one speaks of it. */
  private static final double WASTED_DB = 6;

  private GainRules() {}

  static void judge(GainChainRequest q, Chain chain, Run run) {
    int last = chain.links().size() - 1;
    for (int i = 0; i <= last; i++) {
      judge(chain.links().get(i), "/stages/" + i, i == last ? q.overlapDb() : 0, i == last, run);
    }
    if (q.testToneDbfs() > chain.cleanDbfs() + TOLERANCE_DB) {
      run.find(GainFinding.TONE_CLIPS)
          .at("/test_tone_dbfs")
          .value(q.testToneDbfs())
          .limit(chain.cleanDbfs());
    }
    if (q.overlapDb() > USUAL_OVERLAP_DB) {
      run.find(GainFinding.OVERLAP_LARGE)
          .at("/overlap_db")
          .value(q.overlapDb())
          .limit(USUAL_OVERLAP_DB);
    }
  }

  private static void judge(Link link, String at, double overlapDb, boolean amplifier, Run run) {
    double inputEarly = -link.inputMarginDb();
    double outputEarly = -link.outputMarginDb() - overlapDb;
    if (Math.max(inputEarly, outputEarly) > TOLERANCE_DB) {
      boolean input = inputEarly >= outputEarly;
      run.find(GainFinding.STAGE_CLIPS_EARLY)
          .at(at + (input ? "/max_input_v" : "/max_output_v"))
          .value(Math.max(inputEarly, outputEarly))
          .limit(0)
          .own("stage", link.stage().name())
          .with("side", input ? GainWords.INPUT : GainWords.OUTPUT);
    }
    double missing = link.wantedDb() - link.gainDb();
    if (missing > TOLERANCE_DB) {
      run.find(amplifier ? GainFinding.AMPLIFIER_CANNOT_REACH : GainFinding.STAGE_CANNOT_REACH)
          .at(at + (link.stage().gain() != null ? "/gain/max_db" : "/sensitivity/min_v"))
          .value(missing)
          .limit(0)
          .own("stage", link.stage().name());
    }
  }

  /**
   * @param signalToNoiseDb full output over noise, or null when no noise is known
   * @param levelDb of the noise at the seat, or null
   */
  static void judgeNoise(
      GainChainRequest q,
      Chain chain,
      Noise noise,
      Double signalToNoiseDb,
      Double levelDb,
      Run run) {
    List<Phrase> unknown = new ArrayList<>();
    if (noise.sourceUv() == null) {
      unknown.add(Phrase.of(GainWords.SOURCE));
    }
    chain.links().stream()
        .map(Link::stage)
        .filter(stage -> !stage.noiseKnown())
        .forEach(stage -> unknown.add(Phrase.of(GainWords.STAGE).own("name", stage.name())));
    boolean asked = q.seat() != null || noise.totalUv() != null;
    if (asked && !unknown.isEmpty()) {
      run.find(GainFinding.NOISE_INCOMPLETE).at("").with("parts", unknown);
    }
    if (signalToNoiseDb == null) {
      return;
    }
    boolean audible =
        levelDb != null ? levelDb > q.seat().quietDb() : signalToNoiseDb < QUIET_CHAIN_DB;
    if (levelDb != null && audible) {
      run.find(GainFinding.NOISE_AUDIBLE).at("/seat").value(levelDb).limit(q.seat().quietDb());
    }
    for (int i = 0; audible && i < chain.links().size(); i++) {
      Link link = chain.links().get(i);
      Double share = noise.share(i);
      if (share != null && share > 0.5 && link.inputMarginDb() > WASTED_DB) {
        run.find(GainFinding.STAGE_COSTS_NOISE)
            .at("/stages/" + i)
            .value(link.inputMarginDb())
            .limit(WASTED_DB)
            .own("stage", link.stage().name())
            .with("percent", 100 * share);
      }
    }
  }
}
