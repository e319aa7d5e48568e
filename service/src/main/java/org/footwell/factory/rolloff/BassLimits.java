package org.footwell.factory.rolloff;

import static org.footwell.calculation.Source.DEFINITION;

import java.util.List;
import org.footwell.calculation.Formula;
import org.footwell.factory.rolloff.BassRolloffResult.HeldBy;
import org.footwell.physics.Air;
import org.footwell.physics.Decibels;
import org.footwell.physics.Piston;

/** How much of the wanted gains amplifier, driver and equaliser allow. */
final class BassLimits {

  /** Room of a band in dB: headroom at the stated step, and its level there and here. */
  static final Formula.Of3 ROOM =
      Formula.of("room_db", "headroom + Lh − L", "dB", DEFINITION)
          .with("headroom", "Lh", "L", (room, there, here) -> room + there - here);

  /** A gain below this is none, dB. */
  static final double NO_GAIN_DB = 0.1;

  private static final int HALVINGS = 60;

  /** Gains whose share is below 1 by no more than this are given in full. */
  private static final double WHOLE = 1 - 1e-9;

  private final BandTable table;
  private final int bassBands;
  private final Double mostGainDb;
  private final Headroom headroom;
  private final Cone cone;

  /**
   * Of the bass bands of a table. What is null is no limit.
   *
   * @param mostGainDb most that the equaliser can give
   */
  BassLimits(BandTable table, int bassBands, Double mostGainDb, Headroom headroom, Cone cone) {
    this.table = table;
    this.bassBands = bassBands;
    this.mostGainDb = mostGainDb;
    this.headroom = headroom;
    this.cone = cone;
  }

  /** Room of the amplifier, the same in every band, at a step of the table. */
  record Headroom(int step, double db) {}

  /**
   * A driver whose level is known in one band at one step of the table.
   *
   * @param crestFactorDb of its displacement
   */
  record Cone(
      double sdCm2, double xmaxMm, int step, int band, double levelDbSpl, double crestFactorDb) {}

  /**
   * What share of all gains is allowed.
   *
   * @param share 0 to 1
   * @param passed whether a limit is passed even without any gain
   */
  record Share(double share, HeldBy heldBy, boolean passed) {}

  Share of(int step, List<Double> gains) {
    Share best = new Share(1, HeldBy.NOTHING, false);
    if (mostGainDb != null) {
      double most = gains.stream().mapToDouble(Double::doubleValue).max().orElse(0);
      best = lower(best, most > 0 ? mostGainDb / most : 1, HeldBy.MOST_GAIN, false);
    }
    if (headroom != null) {
      best = withinHeadroom(best, step, gains);
    }
    if (cone != null) {
      boolean passed = displacementMm(step, gains, 0) > cone.xmaxMm();
      best = lower(best, passed ? 0 : shareOfXmax(step, gains), HeldBy.DISPLACEMENT, passed);
    }
    return best;
  }

  private static Share lower(Share best, double share, HeldBy by, boolean passed) {
    boolean either = best.passed() || passed;
    return share < Math.min(best.share(), WHOLE)
        ? new Share(Math.max(0, share), by, either)
        : new Share(best.share(), best.heldBy(), either);
  }

  private Share withinHeadroom(Share before, int step, List<Double> gains) {
    Share best = before;
    for (int b = 0; b < bassBands; b++) {
      if (gains.get(b) < NO_GAIN_DB) {
        continue;
      }
      double room = ROOM.at(headroom.db(), table.level(headroom.step(), b), table.level(step, b));
      best = lower(best, room / gains.get(b), HeldBy.HEADROOM, room < 0);
    }
    return best;
  }

  /** The largest share that keeps the cone within its limit; displacement rises with it. */
  private double shareOfXmax(int step, List<Double> gains) {
    if (displacementMm(step, gains, 1) <= cone.xmaxMm()) {
      return 1;
    }
    double low = 0;
    double high = 1;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      if (displacementMm(step, gains, middle) <= cone.xmaxMm()) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low;
  }

  /** One-way peak in mm: the RMS of all bass bands together, and the crest factor. */
  double displacementMm(int step, List<Double> gains, double share) {
    double squares = 0;
    for (int b = 0; b < bassBands; b++) {
      double level =
          cone.levelDbSpl()
              + table.level(step, b)
              - table.level(cone.step(), cone.band())
              + share * gains.get(b);
      double peak =
          Piston.DISPLACEMENT_OF_LEVEL.at(
              table.bandsHz().get(b), cone.sdCm2(), level, Air.REFERENCE_DENSITY_KG_PER_M3);
      squares += peak * peak / 2;
    }
    return Math.sqrt(squares) * Decibels.toAmplitude(cone.crestFactorDb());
  }
}
