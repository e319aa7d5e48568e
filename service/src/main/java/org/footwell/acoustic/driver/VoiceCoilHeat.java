package org.footwell.acoustic.driver;

import static org.footwell.acoustic.driver.VoiceCoilHeatFinding.COIL_ABOVE_LIMIT;
import static org.footwell.acoustic.driver.VoiceCoilHeatFinding.COIL_ABOVE_USUAL_ADHESIVES;
import static org.footwell.acoustic.driver.VoiceCoilHeatFinding.COIL_BURNS;
import static org.footwell.acoustic.driver.VoiceCoilHeatFinding.COIL_COLDER_THAN_AIR;
import static org.footwell.acoustic.driver.VoiceCoilHeatFinding.COIL_COMPRESSES;
import static org.footwell.acoustic.driver.VoiceCoilHeatFinding.COIL_REACHES_LIMIT_LATER;
import static org.footwell.acoustic.driver.VoiceCoilHeatFinding.COIL_STILL_WARMING;

import org.footwell.acoustic.driver.HeatedCoil.Temperatures;
import org.footwell.acoustic.driver.VoiceCoilHeatRequest.Heating;
import org.footwell.acoustic.driver.VoiceCoilHeatRequest.Heating.Held;
import org.footwell.acoustic.driver.VoiceCoilHeatResult.Balance;
import org.footwell.calculation.Calculation;
import org.footwell.calculation.Card;
import org.footwell.calculation.Run;
import org.footwell.calculation.Source;
import org.footwell.parts.Safety;

/** How warm a voice coil is or becomes, and what that costs. */
public final class VoiceCoilHeat implements Calculation<VoiceCoilHeatRequest, VoiceCoilHeatResult> {

  /** Where usual adhesives soften, °C: common practice, no source. */
  private static final double ADHESIVES_C = 150;

  /** What no usual voice coil stands, °C: common practice, no source. */
  private static final double BURNS_C = 300;

  /** Level lost that is worth a word, dB: half the power. Common practice, no source. */
  private static final double COMPRESSES_DB = 3;

  /** What the reading of a usual ohmmeter, 1 % off, makes of the temperature, K. */
  private static final double READING_K = 3;

  /** Nearer than this to its end the coil is as good as there, K. */
  private static final double SETTLED_K = 1;

  private static final Card<VoiceCoilHeatRequest, VoiceCoilHeatResult> CARD =
      Card.of("voice-coil-heat", VoiceCoilHeatRequest.class, VoiceCoilHeatResult.class)
          .title("Heat of a voice coil")
          .purpose(
              "How warm a voice coil is by its resistance, or becomes under power, what level that"
                  + " costs, and how long it may go on.")
          .example(
              """
              {"re_ohm": 3.4, "largest_coil_c": 180,
               "heating": {"mean_power_w": 60, "coil_magnet_k_per_w": 1.6,
                           "magnet_air_k_per_w": 1.1, "coil_s": 12, "magnet_s": 1500,
                           "duration_s": 600}}
              """)
          .sources(
              HeatedCoil.RESISTANCE_METHOD,
              HeatedCoil.TWO_BODIES,
              Source.DEFINITION,
              Source.COMMON_PRACTICE)
          .limits(
              "Coil and magnet have one temperature each; the middle of a coil is warmer than its"
                  + " mean, which is what its resistance tells.",
              "Thermal resistances are taken as constant; a cone that moves far pumps air through"
                  + " the gap and cools its coil better than the same power at high frequencies.",
              "The compression is that of the middle band; at the resonance and where the inductance"
                  + " rules it is less. A magnet that loses force when warm is not in it.")
          .findings(VoiceCoilHeatFinding.values())
          .cautions(Safety.HEAT, Safety.FIRE)
          .build();

  @Override
  public Card<VoiceCoilHeatRequest, VoiceCoilHeatResult> card() {
    return CARD;
  }

  @Override
  public VoiceCoilHeatResult compute(VoiceCoilHeatRequest q, Run run) {
    return q.heating() == null ? measured(q, run) : heated(q, q.heating(), run);
  }

  private static VoiceCoilHeatResult measured(VoiceCoilHeatRequest q, Run run) {
    double coil =
        run.apply(HeatedCoil.COIL_C, q.hotOhm(), q.reOhm(), q.conductor().k(), q.reTemperatureC());
    if (coil < q.temperatureC() - READING_K) {
      run.find(COIL_COLDER_THAN_AIR).at("/hot_ohm").value(coil).limit(q.temperatureC());
    }
    judge(q, coil, "/hot_ohm", run);
    double compression = compression(q, q.hotOhm(), "/hot_ohm", run);
    return new VoiceCoilHeatResult(
        coil, null, q.hotOhm(), coil - q.temperatureC(), compression, null, null, null);
  }

  private static VoiceCoilHeatResult heated(VoiceCoilHeatRequest q, Heating heating, Run run) {
    HeatedCoil model = model(q, heating);
    Balance end = balance(q, heating, run);
    Temperatures now =
        heating.durationS() == null
            ? new Temperatures(end.coilC(), end.magnetC())
            : after(heating.durationS(), model, run);
    Double limitAfter = limitAfter(q, model, end, run);
    judge(q, now.coilC(), "/heating/mean_power_w", run);
    remarkOnWhatComes(q, now, end, limitAfter, run);
    double hot = hotOhm(q, now.coilC(), run);
    double compression = compression(q, hot, "/heating/mean_power_w", run);
    return new VoiceCoilHeatResult(
        now.coilC(),
        now.magnetC(),
        hot,
        now.coilC() - q.temperatureC(),
        compression,
        power(q, heating, hot, run),
        end,
        limitAfter);
  }

  private static Temperatures after(double seconds, HeatedCoil model, Run run) {
    double coil = run.apply(model.coilAfter(run::checkDeadline), seconds);
    return new Temperatures(coil, model.after(seconds, run::checkDeadline).magnetC());
  }

  private static HeatedCoil model(VoiceCoilHeatRequest q, Heating heating) {
    return HeatedCoilBuilder.builder()
        .k(q.conductor().k())
        .reC(q.reTemperatureC())
        .airC(q.temperatureC())
        .powerW(heating.meanPowerW())
        .powerHeld(heating.held() == Held.POWER)
        .coilMagnetKPerW(heating.coilMagnetKPerW())
        .magnetAirKPerW(heating.magnetAirKPerW())
        .coilS(heating.coilS())
        .magnetS(heating.magnetS())
        .build();
  }

  private static Balance balance(VoiceCoilHeatRequest q, Heating heating, Run run) {
    double air = q.temperatureC();
    double through = heating.coilMagnetKPerW() + heating.magnetAirKPerW();
    double coil =
        heating.held() == Held.POWER
            ? run.apply(HeatedCoil.BALANCE_C, air, heating.meanPowerW(), through)
            : run.apply(
                HeatedCoil.BALANCE_AT_VOLTAGE_C,
                air,
                q.conductor().k(),
                heating.meanPowerW() * through,
                q.reTemperatureC());
    double hot = hotOhm(q, coil, run);
    double power = power(q, heating, hot, run);
    double magnet = run.apply(HeatedCoil.BALANCE_C, air, power, heating.magnetAirKPerW());
    return new Balance(
        coil, magnet, hot, run.apply(HeatedCoil.COMPRESSION_DB, hot, q.reOhm()), power);
  }

  private static double hotOhm(VoiceCoilHeatRequest q, double coilC, Run run) {
    return run.apply(HeatedCoil.HOT_OHM, q.reOhm(), q.conductor().k(), coilC, q.reTemperatureC());
  }

  private static double power(VoiceCoilHeatRequest q, Heating heating, double hotOhm, Run run) {
    return heating.held() == Held.POWER
        ? heating.meanPowerW()
        : run.apply(HeatedCoil.POWER_LEFT, heating.meanPowerW(), q.reOhm(), hotOhm);
  }

  private static double compression(VoiceCoilHeatRequest q, double hotOhm, String from, Run run) {
    double lost = run.apply(HeatedCoil.COMPRESSION_DB, hotOhm, q.reOhm());
    if (lost > COMPRESSES_DB) {
      run.find(COIL_COMPRESSES).at(from).value(lost).limit(COMPRESSES_DB);
    }
    return lost;
  }

  /** When the coil has its limit: nothing where none is given or it never has. */
  private static Double limitAfter(VoiceCoilHeatRequest q, HeatedCoil model, Balance end, Run run) {
    if (q.largestCoilC() == null || end.coilC() <= q.largestCoilC()) {
      return null;
    }
    double seconds =
        q.largestCoilC() <= q.temperatureC()
            ? 0
            : model.untilS(q.largestCoilC(), run::checkDeadline);
    return Double.isNaN(seconds) ? null : Double.valueOf(seconds);
  }

  private static void judge(VoiceCoilHeatRequest q, double coilC, String from, Run run) {
    if (q.largestCoilC() != null) {
      if (coilC > q.largestCoilC()) {
        run.find(COIL_ABOVE_LIMIT).at("/largest_coil_c").value(coilC).limit(q.largestCoilC());
      }
    } else if (coilC > BURNS_C) {
      run.find(COIL_BURNS).at(from).value(coilC).limit(BURNS_C);
    } else if (coilC > ADHESIVES_C) {
      run.find(COIL_ABOVE_USUAL_ADHESIVES).at(from).value(coilC).limit(ADHESIVES_C);
    }
  }

  private static void remarkOnWhatComes(
      VoiceCoilHeatRequest q, Temperatures now, Balance end, Double limitAfter, Run run) {
    if (limitAfter != null && now.coilC() <= q.largestCoilC()) {
      run.find(COIL_REACHES_LIMIT_LATER)
          .at("/largest_coil_c")
          .value(end.coilC())
          .limit(q.largestCoilC())
          .with("after", limitAfter);
    }
    if (end.coilC() - now.coilC() > SETTLED_K) {
      run.find(COIL_STILL_WARMING).at("/heating/duration_s").value(now.coilC()).limit(end.coilC());
    }
  }
}
