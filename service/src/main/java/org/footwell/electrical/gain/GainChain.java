package org.footwell.electrical.gain;

import static org.footwell.calculation.Source.DEFINITION;

import java.util.ArrayList;
import java.util.List;
import org.footwell.calculation.Calculation;
import org.footwell.calculation.Card;
import org.footwell.calculation.Formula;
import org.footwell.calculation.Run;
import org.footwell.calculation.Source;
import org.footwell.electrical.gain.Chain.Link;
import org.footwell.electrical.gain.GainChainRequest.Weighting;
import org.footwell.electrical.gain.GainChainResult.FactorySource;
import org.footwell.electrical.gain.GainChainResult.Setting;
import org.footwell.parts.FactoryOutput;
import org.footwell.parts.Safety;
import org.footwell.parts.Stage;
import org.footwell.parts.StageBuilder;
import org.footwell.parts.Terminals;
import org.footwell.parts.plan.AskOfPlan;
import org.footwell.parts.plan.PlanPlace;
import org.footwell.parts.plan.PlanReader;
import org.footwell.parts.plan.Signal;
import org.footwell.physics.Decibels;
import org.footwell.physics.Electricity;

/** How to set the gains of a chain, what to measure then, and how much noise it makes. */
public final class GainChain
    implements Calculation<GainChainRequest, GainChainResult>, AskOfPlan<GainChainRequest> {

  private static final Source DIVIDER = Source.of("Voltage divider, Ohm's law");

  private static final Formula.Of2 TONE =
      Formula.of("target_loaded_v", "output·10^(tone/20)", "V", DEFINITION)
          .with("output", "tone", (output, tone) -> output * Decibels.toAmplitude(tone));
  private static final Formula.Of3 OPEN =
      Formula.of("target_open_v", "U·(R + Ro)/R", "V", DIVIDER)
          .with("U", "R", "Ro", (u, load, out) -> u * (load + out) / load);
  private static final Formula.Of2 SIGNAL_TO_NOISE =
      Formula.of("signal_to_noise_db", "20·lg(U/N)", "dB", DEFINITION)
          .with("U", "N", (u, n) -> Decibels.ofAmplitude(u / n));

  private static final Card<GainChainRequest, GainChainResult> CARD =
      Card.of("gain-chain", GainChainRequest.class, GainChainResult.class)
          .title("Gain from source to amplifier")
          .purpose(
              "How are converter, processor and amplifier set so that all reach their limit"
                  + " together at the chosen clean volume; what must a meter show at the amplifier"
                  + " with a test tone; and how much noise comes with it.")
          .example(
              """
              {"factory_output": {"supply_v": 14.4, "drop_v": 2, "stated_power_w": 50,
                 "stated_load_ohm": 4, "bridged": true, "measured_differentially": true,
                 "load_detection": false, "turn_on": "remote_wire", "noise_uv": 200},
               "stages": [
                 {"name": "processor", "max_input_v": 12, "max_output_v": 4,
                  "gain": {"min_db": -20, "max_db": 6}, "high_level_input": true,
                  "input_noise_uv": 20, "output_noise_uv": 12},
                 {"name": "amplifier", "max_input_v": 8, "max_output_v": 20,
                  "sensitivity": {"min_v": 0.2, "max_v": 5}, "input_noise_uv": 8}],
               "load_ohm": 4, "amplifier": {"output_ohm": 0.04}, "overlap_db": 5,
               "test_tone_dbfs": -5, "terminals": "open",
               "seat": {"level_db_spl": 90, "noise_weighting": "a"}}
              """)
          .sources(
              DEFINITION, BridgeOutput.BRIDGE, DIVIDER, Noise.UNCORRELATED, Source.COMMON_PRACTICE)
          .limits(
              "Every stage is linear up to its limit and loads the one before as stated: voltages"
                  + " are those with the next device connected.",
              "Filters, equaliser boosts and tone controls add to the gain at their frequencies:"
                  + " leave as much room as the largest boost.",
              "Noise is that of the parts as given; hum and whine from ground loops are not in it.",
              "A factory output may change with volume, frequency and time: measure it before"
                  + " relying on figures from its supply.")
          .findings(GainFinding.values())
          .refusals(GainFault.values())
          .cautions(Safety.HEARING, Safety.FIRE, Safety.BATTERY, Safety.HEAT)
          .build();

  @Override
  public Card<GainChainRequest, GainChainResult> card() {
    return CARD;
  }

  @Override
  public List<PlanPlace> places() {
    return List.of(PlanPlace.CHANNEL);
  }

  @Override
  public GainChainRequest ask(PlanReader plan) {
    int channel = plan.about().index();
    Signal signal = plan.poses(plan.plan().signal(), "/signal");
    plan.also("/signal");
    List<Stage> stages = new ArrayList<>(signal == null ? List.of() : signal.stages());
    stages.add(amplifier(channel, plan));
    plan.called("/load_ohm", plan.about().pointer());
    return GainChainRequestBuilder.builder()
        .headUnit(signal == null ? null : signal.headUnit())
        .factoryOutput(signal == null ? null : signal.factoryOutput())
        .stages(stages)
        .loadOhm(plan.figures().loadOhm(channel))
        .amplifier(plan.amplifier(channel))
        .bridged(plan.bridged(channel, "/bridged"))
        .overlapDb(signal == null ? null : signal.overlapDb())
        .testToneDbfs(signal == null ? null : signal.testToneDbfs())
        .terminals(signal == null ? null : signal.terminals())
        .build();
  }

  /** The amplifier as the last stage: its largest output is the clean one on this channel. */
  private static Stage amplifier(int channel, PlanReader plan) {
    String at = plan.outputsAt(channel);
    Stage.Sensitivity sensitivity =
        plan.needs(plan.index().outputs(channel).sensitivity(), at + "/sensitivity");
    return plan.made(
        StageBuilder.builder()
            .name(plan.plan().channels().get(channel).id())
            .maxInputV(sensitivity == null ? null : sensitivity.maxV())
            .maxOutputV(plan.figures().outputV(channel))
            .sensitivity(sensitivity)
            .build(),
        at);
  }

  @Override
  public GainChainResult compute(GainChainRequest q, Run run) {
    FactoryOutput fromFactory = q.factoryOutput();
    double source =
        fromFactory == null
            ? q.headUnit().cleanOutputV()
            : FactoryCheck.cleanOutputV(fromFactory, run);
    FactorySource factory =
        fromFactory == null
            ? null
            : FactoryCheck.judge(fromFactory, source, q.stages().get(0), run);

    Chain chain = Chain.of(source, q.stages(), q.overlapDb(), run);
    GainRules.judge(q, chain, run);
    double loaded = run.apply(TONE, chain.amplifier().outputV(), q.testToneDbfs());
    double open = run.apply(OPEN, loaded, q.loadOhm(), q.outputOhm());
    Double tonePower = tonePower(q, loaded, run);

    Double sourceNoise = fromFactory == null ? q.headUnit().noiseUv() : fromFactory.noiseUv();
    Noise noise = Noise.of(chain, sourceNoise, run);
    Double signalToNoise = null;
    Double level = null;
    if (noise.any()) {
      double full = chain.amplifier().stage().maxOutputV();
      signalToNoise = run.apply(SIGNAL_TO_NOISE, full, noise.totalUv() / 1e6);
      level =
          q.seat() == null
              ? null
              : (Double) noise.levelDb(q.seat().levelDbSpl(), q.seat().channelCount(), run);
    }
    GainRules.judgeNoise(q, chain, noise, signalToNoise, level, run);
    boolean weighted = q.seat() != null && q.seat().noiseWeighting() == Weighting.A;
    return GainChainResultBuilder.builder()
        .targetV(q.terminals() == Terminals.OPEN ? open : loaded)
        .targetTerminals(q.terminals())
        .targetOpenV(open)
        .targetLoadedV(loaded)
        .tonePowerW(tonePower)
        .cleanDbfs(chain.cleanDbfs())
        .sourceOutputV(source)
        .factory(factory)
        .stages(settings(chain, noise))
        .noiseUv(noise.totalUv())
        .signalToNoiseDb(signalToNoise)
        .noiseLevelDba(weighted ? level : null)
        .noiseLevelDbSpl(weighted ? null : level)
        .build();
  }

  private static Double tonePower(GainChainRequest q, double loaded, Run run) {
    if (q.terminals() == Terminals.OPEN) {
      return null;
    }
    double power = run.apply(Electricity.POWER, loaded, q.loadOhm());
    run.find(GainFinding.TONE_INTO_DRIVER).at("/terminals").value(power);
    return power;
  }

  private static List<Setting> settings(Chain chain, Noise noise) {
    List<Setting> settings = new ArrayList<>();
    for (int i = 0; i < chain.links().size(); i++) {
      Link link = chain.links().get(i);
      settings.add(
          new Setting(
              link.stage().name(),
              link.gainDb(),
              link.sensitivityV(),
              link.inputV(),
              link.outputV(),
              link.inputMarginDb(),
              link.outputMarginDb(),
              noise.share(i)));
    }
    return settings;
  }
}
