package org.footwell.vehicle;

import java.util.ArrayList;
import java.util.List;
import org.footwell.calculation.Rebase;
import org.footwell.calculation.Run;
import org.footwell.electrical.gain.GainChain;
import org.footwell.electrical.gain.GainChainRequest;
import org.footwell.electrical.gain.GainChainRequestBuilder;
import org.footwell.electrical.gain.GainChainResult;
import org.footwell.parts.AmplifierBuilder;
import org.footwell.parts.Stage;

/** The voltage to set each amplifier output to, where its sensitivity and the signal are known. */
final class GainReview {

  private static final GainChain GAIN_CHAIN = new GainChain();

  private final VehiclePlan plan;
  private final Resolved resolved;
  private final Run run;

  GainReview(VehiclePlan plan, Resolved resolved, Run run) {
    this.plan = plan;
    this.resolved = resolved;
    this.run = run;
  }

  /** RMS target voltage of a channel for the test tone, V; null where it cannot be told. */
  Double targetV(int channel, ChannelReview.Powered powered) {
    Stage.Sensitivity sensitivity = resolved.output(channel).sensitivity();
    if (plan.signal() == null || sensitivity == null) {
      return null;
    }
    return run.call(GAIN_CHAIN, request(channel, powered, sensitivity), places(channel))
        .map(GainChainResult::targetV)
        .orElse(null);
  }

  /** The clean voltage, or less where the drivers bear less for long. */
  private static double largestV(ChannelReview.Powered powered) {
    Double limiter = powered.power().limiterRmsV();
    double clean = powered.power().voltageV();
    return limiter == null ? clean : Math.min(clean, limiter);
  }

  private GainChainRequest request(
      int channel, ChannelReview.Powered powered, Stage.Sensitivity sensitivity) {
    Signal signal = plan.signal();
    List<Stage> stages = new ArrayList<>(signal.stages());
    stages.add(
        new Stage(
            plan.channels().get(channel).id(),
            sensitivity.maxV(),
            largestV(powered),
            null,
            sensitivity,
            null,
            null,
            null));
    return GainChainRequestBuilder.builder()
        .headUnit(signal.headUnit())
        .factoryOutput(signal.factoryOutput())
        .stages(stages)
        .loadOhm(powered.load().loadOhm())
        .amplifier(
            AmplifierBuilder.builder().outputOhm(resolved.output(channel).outputOhm()).build())
        .overlapDb(signal.overlapDb())
        .testToneDbfs(signal.testToneDbfs())
        .terminals(signal.terminals())
        .build();
  }

  /** What is about the shared signal is told once; the sentences name the stage. */
  private Rebase places(int channel) {
    String outputAt =
        "/amplifiers/" + resolved.amplifierOf(channel) + "/outputs/" + resolved.outputOf(channel);
    return Rebase.to("/channels/" + channel, null)
        .from("", "/signal")
        .with("/stages/" + plan.signal().stages().size(), outputAt + "/sensitivity");
  }
}
