package org.footwell.vehicle;

import java.util.stream.Stream;
import org.footwell.acoustic.level.LevelFinding;
import org.footwell.calculation.Card;
import org.footwell.calculation.FindingCode;
import org.footwell.calculation.Source;
import org.footwell.parts.FilterFault;
import org.footwell.parts.Safety;
import org.footwell.parts.plan.VehiclePlan;
import org.footwell.physics.Air;
import org.footwell.physics.Conductors;
import org.footwell.physics.ConstantPower;
import org.footwell.physics.FilterPrototype;
import org.footwell.physics.FrequencyWeighting;
import org.footwell.physics.NoiseDose;
import org.footwell.physics.Piston;
import org.footwell.physics.PointSource;
import org.footwell.physics.ProgrammeSpectrum;
import org.footwell.physics.SensitivityBases;
import org.footwell.physics.ThieleSmall;
import org.footwell.physics.ThirdOctaves;
import org.footwell.vehicle.questions.DemoPlan;
import org.footwell.vehicle.questions.PlanDocument;

/** The declaration of plan-review. */
final class PlanCard {

  static final Card<VehiclePlan, PlanReviewResult> CARD =
      Card.of("plan-review", VehiclePlan.class, PlanReviewResult.class)
          .title("Review of a whole vehicle plan")
          .purpose(
              "One document describes the vehicle, its seats, parts, amplifiers and channels. One"
                  + " model of the whole chain, from full scale of the source to each seat, says what"
                  + " to set on every channel and what comes of it: gains, trims, delays, levels by"
                  + " seat and band, the largest clean level and what ends it, heat and movement of"
                  + " every driver, loads, supply, cables and fuses. Sheet, level and exposure are"
                  + " one state; what was really set counts instead of what is advised.")
          .example(DemoPlan.json())
          .sources(
              ThieleSmall.SMALL_DRIVER,
              ThieleSmall.SMALL_CLOSED,
              ThieleSmall.SMALL_VENTED,
              ThieleSmall.LEACH,
              Piston.HALF_SPACE,
              SensitivityBases.IEC_60268_5,
              ProgrammeSpectrum.IEC_60268_1,
              ThirdOctaves.IEC_61260_1,
              FrequencyWeighting.IEC_61672_1,
              FilterPrototype.BUTTERWORTH,
              FilterPrototype.LINKWITZ,
              FilterPrototype.THOMSON,
              PointSource.INVERSE_SQUARE,
              Air.ISO_9613_1,
              ConstantPower.KIRCHHOFF,
              Conductors.IEC_60228,
              Conductors.IEC_60028,
              NoiseDose.NIOSH,
              Source.COMMON_PRACTICE)
          .limits(
              "The chain is linear up to the clip point; thermal compression is not in it: hot coils"
                  + " give 1 to 3 dB less.",
              "Drivers are points in half space with flat pass bands: no reflections, no standing"
                  + " waves, no beaming. Expect several dB either way until it is measured.",
              "Pressures are added with their phases up to 300 Hz and as powers above; the cabin's"
                  + " gain has no phase.",
              "The voice coils of one driver are taken as driven alike, without mutual inductance.",
              "Filters of which only the maker's statement is known are taken as ideal and free of"
                  + " loss.",
              "A supply is worked out for means over minutes and for a full sine of a few tenths of a"
                  + " second, without large capacitors.",
              "Frequencies are looked at in five places of every third octave from 20 Hz to 20 kHz:"
                  + " sums over the spectrum are off by less than 0.02 dB.")
          .findings(
              Stream.of(Stream.of(PlanFinding.values()), Stream.of(LevelFinding.BELOW_ROAD_NOISE))
                  .flatMap(codes -> codes)
                  .toArray(FindingCode[]::new))
          .refusals(FilterFault.and(PlanDocument.faults()))
          .cautions(Safety.values())
          .occasionalCautions(PlanCaution.values())
          .build();

  private PlanCard() {}
}
