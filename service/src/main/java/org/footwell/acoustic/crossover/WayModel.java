package org.footwell.acoustic.crossover;

import static org.footwell.calculation.Source.DEFINITION;

import java.util.ArrayList;
import java.util.List;
import org.footwell.calculation.Arithmetic;
import org.footwell.calculation.Formula;
import org.footwell.parts.Sensitivity.Basis;
import org.footwell.parts.WayRole;
import org.footwell.physics.Decibels;
import org.footwell.physics.Piston;
import org.footwell.physics.SensitivityBases;
import org.footwell.physics.ThieleSmall;

/**
 * What is known of one way before anything is proposed.
 *
 * @param index its place among the ways
 * @param way as given
 * @param beamingHz where its cone reaches the ka allowed
 * @param excursion how far it moves, or null when that is not known
 * @param corners lowest corner for each order by displacement; none when that is not known
 * @param sinePowerW power for the wanted level of a sine, or null without a sensitivity
 * @param wholeProgrammeW average power if it had to play the whole programme, or null
 */
record WayModel(
    int index,
    CrossoverWay way,
    double beamingHz,
    FilteredExcursion excursion,
    List<Corner> corners,
    Double sinePowerW,
    Double wholeProgrammeW) {

  /** Ratio of areas beyond which two cones are not of the same kind; common practice. */
  private static final double FAR_LARGER = 3;

  private static final double BUTTERWORTH_Q = Math.sqrt(0.5);

  private static final Formula.Of2 SENSITIVITY_PER_WATT =
      Formula.of(
              "one_watt_level_db_spl", "S − 10·lg(2.83²/R)", "dB SPL", SensitivityBases.IEC_60268_5)
          .with("S", "R", (s, r) -> s - SensitivityBases.BASIS_DIFFERENCE.at(r));

  /** Power in W for a level, both levels at 1 m. */
  static final Formula.Of2 POWER_FOR_LEVEL =
      Formula.of("power_w", "10^((L − S)/10)", "W", DEFINITION)
          .with("L", "S", (level, s) -> Decibels.toPower(level - s));

  static WayModel of(int index, PlanFrame frame, Arithmetic steps) {
    CrossoverWay way = frame.ways().get(index);
    double beaming =
        steps.apply(
            Piston.FREQUENCY_OF_KA,
            frame.scope().beamingKa(),
            way.driver().sdCm2(),
            frame.speedOfSoundMPerS());
    Double sine = null;
    Double programme = null;
    if (way.driver().sensitivity() != null) {
      double stated = way.driver().sensitivity().levelDbSpl();
      double perWatt =
          way.driver().sensitivity().basis() == Basis.ONE_WATT
              ? stated
              : steps.apply(SENSITIVITY_PER_WATT, stated, way.driver().ratedOhm());
      sine = steps.apply(POWER_FOR_LEVEL, frame.sineLevelDbSpl(), perWatt);
      programme = steps.apply(POWER_FOR_LEVEL, frame.programmeLevelDbSpl(), perWatt);
    }
    FilteredExcursion excursion = excursion(way, frame, steps);
    List<Corner> corners =
        index == 0 || excursion == null ? List.of() : corners(excursion, frame, steps);
    return new WayModel(index, way, beaming, excursion, corners, sine, programme);
  }

  /** The lowest corner in Hz for an order, or null when displacement needs no filter. */
  record Corner(int order, Double lowestHz) {}

  private static List<Corner> corners(
      FilteredExcursion excursion, PlanFrame frame, Arithmetic steps) {
    List<Corner> all = new ArrayList<>();
    for (int order : frame.scope().orders()) {
      steps.checkDeadline();
      FilteredExcursion.Peak lowest = excursion.lowestCorner(frame.scope().kind(), order);
      all.add(new Corner(order, lowest == null ? null : lowest.value()));
    }
    return all;
  }

  private static FilteredExcursion excursion(CrossoverWay way, PlanFrame frame, Arithmetic steps) {
    if (way.driver().xmaxMm() == null || way.resonanceHz() == null) {
      return null;
    }
    return new FilteredExcursion(
        way.driver().sdCm2(),
        way.driver().xmaxMm(),
        way.resonanceHz(),
        q(way, steps),
        frame.sineLevelDbSpl(),
        frame.densityKgPerM3());
  }

  /** Total Q at the resonance that counts. */
  private static double q(CrossoverWay way, Arithmetic steps) {
    if (qUnknown(way)) {
      return BUTTERWORTH_Q;
    }
    if (way.fcHz() == null) {
      return way.driver().qts();
    }
    // In a box Q and resonance rise by the same ratio.
    double stiffer = way.fcHz() / way.driver().fsHz();
    return steps.apply(ThieleSmall.IN_CLOSED_BOX, way.driver().qts(), stiffer * stiffer - 1);
  }

  /** Whether the Q behind the displacement is only assumed. */
  boolean assumesQ() {
    return excursion != null && qUnknown(way);
  }

  private static boolean qUnknown(CrossoverWay way) {
    return way.driver().qts() == null || (way.fcHz() != null && way.driver().fsHz() == null);
  }

  /** Where the wanted level takes all of xmax, or null. */
  Double fullLevelFromHz(PlanFrame frame, Arithmetic steps) {
    if (way.driver().xmaxMm() == null) {
      return null;
    }
    double atOneHertz =
        steps.apply(
            Piston.DISPLACEMENT_OF_LEVEL,
            1,
            way.driver().sdCm2(),
            frame.sineLevelDbSpl(),
            frame.densityKgPerM3());
    return steps.apply(FilteredExcursion.FULL_LEVEL_FROM, atOneHertz, way.driver().xmaxMm());
  }

  /** Share of the programme it stands for long, or null when that is not known; may exceed 1. */
  Double shareAllowed() {
    return wholeProgrammeW == null || way.driver().continuousPowerW() == null
        ? null
        : Double.valueOf(way.driver().continuousPowerW() / wholeProgrammeW);
  }

  /**
   * Whether it belongs below another way: by both roles, or by a cone that is several times as large
   * or is larger and resonates lower. A somewhat larger cone alone decides nothing.
   */
  boolean isPlainlyBelow(WayModel other) {
    if (WayRole.decideOrder(way.role(), other.way.role())) {
      return way.role().compareTo(other.way.role()) < 0;
    }
    double larger = way.driver().sdCm2() / other.way.driver().sdCm2();
    Double own = way.resonanceHz();
    Double others = other.way.resonanceHz();
    boolean lower = own != null && others != null && own < others;
    return larger > FAR_LARGER || (larger > 1 && lower);
  }

  String pointer() {
    return "/ways/" + index;
  }
}
