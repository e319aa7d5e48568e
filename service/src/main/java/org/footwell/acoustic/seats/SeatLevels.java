package org.footwell.acoustic.seats;

import java.util.List;
import org.footwell.calculation.Calculation;
import org.footwell.calculation.Card;
import org.footwell.calculation.Run;
import org.footwell.calculation.Source;
import org.footwell.parts.FilterFault;
import org.footwell.parts.FrequencyFault;
import org.footwell.parts.Safety;
import org.footwell.parts.plan.AskOfPlan;
import org.footwell.parts.plan.PlanPlace;
import org.footwell.parts.plan.PlanReader;
import org.footwell.physics.Air;
import org.footwell.physics.AnalogFilter;
import org.footwell.physics.FilterPrototype;
import org.footwell.physics.FrequencyWeighting;
import org.footwell.physics.NoiseDose;
import org.footwell.physics.Piston;
import org.footwell.physics.PointSource;
import org.footwell.physics.SensitivityBases;
import org.footwell.physics.ThieleSmall;
import org.footwell.physics.ThirdOctaves;

/** Levels at several seats from several sources, band by band, and the headroom over a target. */
public final class SeatLevels
    implements Calculation<SeatLevelsRequest, SeatLevelsResult>, AskOfPlan<SeatLevelsRequest> {

  static final Source SUPERPOSITION = Source.of("Superposition of sound pressures");

  private static final Card<SeatLevelsRequest, SeatLevelsResult> CARD =
      Card.of("seat-levels", SeatLevelsRequest.class, SeatLevelsResult.class)
          .title("Levels at the seats by band")
          .purpose(
              "How loud several sources together get at each seat, band by band, with their filters,"
                  + " delays and distances; whether amplifier, heat or cone movement holds them, and"
                  + " what headroom is left over a target curve.")
          .example(
              """
              {"sources": [
                 {"name": "sub", "power_w": 300,
                  "driver": {"rated_ohm": 4, "continuous_power_w": 250,
                    "sensitivity": {"level_db_spl": 86, "basis": "one_watt"},
                    "sd_cm2": 480, "xmax_mm": 12},
                  "roll_off": {"resonance_hz": 45, "q": 0.8},
                  "low_pass": {"kind": "linkwitz_riley", "order": 4, "frequency_hz": 80},
                  "position": {"x_m": -2.2, "y_m": 0, "z_m": -0.3}},
                 {"name": "left door", "power_w": 75,
                  "driver": {"rated_ohm": 4, "continuous_power_w": 60,
                    "sensitivity": {"level_db_spl": 89, "basis": "one_watt"},
                    "sd_cm2": 140, "xmax_mm": 4},
                  "roll_off": {"resonance_hz": 60, "q": 0.7}, "delay_ms": 5.2,
                  "high_pass": {"kind": "linkwitz_riley", "order": 4, "frequency_hz": 80},
                  "position": {"x_m": 0.5, "y_m": 0.7, "z_m": -0.4}},
                 {"name": "right door", "power_w": 75,
                  "driver": {"rated_ohm": 4, "continuous_power_w": 60,
                    "sensitivity": {"level_db_spl": 89, "basis": "one_watt"},
                    "sd_cm2": 140, "xmax_mm": 4},
                  "roll_off": {"resonance_hz": 60, "q": 0.7}, "delay_ms": 3.6,
                  "high_pass": {"kind": "linkwitz_riley", "order": 4, "frequency_hz": 80},
                  "position": {"x_m": 0.5, "y_m": -0.7, "z_m": -0.4}}],
               "seats": [
                 {"name": "driver", "position": {"x_m": 0, "y_m": 0.4, "z_m": 0.3}},
                 {"name": "passenger", "position": {"x_m": 0, "y_m": -0.4, "z_m": 0.3}}],
               "cabin": {"length_m": 2.8}, "from_hz": 25, "to_hz": 2000,
               "target": [{"frequency_hz": 25, "level_db_spl": 98},
                          {"frequency_hz": 60, "level_db_spl": 98},
                          {"frequency_hz": 150, "level_db_spl": 90},
                          {"frequency_hz": 2000, "level_db_spl": 86}]}
              """)
          .sources(
              SensitivityBases.IEC_60268_5,
              Piston.HALF_SPACE,
              ThieleSmall.SMALL_CLOSED,
              FilterPrototype.BUTTERWORTH,
              FilterPrototype.LINKWITZ,
              FilterPrototype.THOMSON,
              AnalogFilter.SECTION,
              PointSource.INVERSE_SQUARE,
              SUPERPOSITION,
              ThirdOctaves.IEC_61260_1,
              FrequencyWeighting.IEC_61672_1,
              NoiseDose.NIOSH,
              Air.ISO_9613_1,
              Source.COMMON_PRACTICE)
          .limits(
              "Sources are points in half space with flat pass bands: no reflections, no standing"
                  + " waves, no beaming. Expect several dB either way until it is measured.",
              "A cone is a rigid piston; a vented box moves it less at its tuning, which is not in"
                  + " it.",
              "Phases are those of filters, roll-off, delay and distance; the phase of inductance"
                  + " and of the cabin is not in them.",
              "Thermal compression is not in it: hot coils give 1 to 3 dB less.",
              "The programme in the shape of the target has the same crest factor at every source.")
          .findings(SeatLevelFinding.values())
          .refusals(
              SeatLevelFault.PLACE_MISSING,
              SeatLevelFault.SEAT_DISTANCE_MISSING,
              SeatLevelFault.SOURCE_TOO_NEAR,
              FilterFault.LINKWITZ_RILEY_ODD,
              SeatLevelFault.TARGET_OUTSIDE_BANDS,
              FrequencyFault.RANGE_WITHOUT_POINTS)
          .cautions(Safety.HEARING)
          .build();

  @Override
  public Card<SeatLevelsRequest, SeatLevelsResult> card() {
    return CARD;
  }

  @Override
  public List<PlanPlace> places() {
    return List.of(PlanPlace.PLAN);
  }

  @Override
  public SeatLevelsRequest ask(PlanReader plan) {
    return new LevelsOfPlan(plan).request();
  }

  @Override
  public SeatLevelsResult compute(SeatLevelsRequest q, Run run) {
    return new SystemLevels(q, run).result();
  }
}
