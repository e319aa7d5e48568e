package org.footwell.vehicle.chain;

import java.util.List;
import java.util.stream.IntStream;

/**
 * One channel with the programme on it: what it can do and what it must not.
 *
 * @param chain from full scale to the ears
 * @param drive what the programme makes of it
 * @param borne each of its drivers
 * @param rmsLimiter whether a limiter guards its voice coils
 * @param boost most that its filters lift, as a ratio
 * @param meanW what its amplifier gives on average for a source of 1 V
 */
public record PlayedChannel(
    ChannelChain chain,
    Drive drive,
    List<Borne> borne,
    boolean rmsLimiter,
    double boost,
    double meanW) {

  /** What a notch leaves is no less than this: 180 dB below what comes in. */
  private static final double SILENT = 1e-9;

  public static PlayedChannel of(ChannelChain chain, double crestFactorDb, boolean rmsLimiter) {
    Drive drive = new Drive(chain, crestFactorDb);
    List<Borne> borne =
        IntStream.range(0, chain.drivers().size())
            .mapToObj(d -> Borne.of(chain, drive, d))
            .toList();
    return new PlayedChannel(chain, drive, borne, rmsLimiter, chain.boost(), drive.terminalW());
  }

  /**
   * The largest source voltage that something allows.
   *
   * @param volts V
   * @param by what ends it
   * @param driver index in the plan, or −1 where it is no driver
   */
  public record Allowed(double volts, Limit by, int driver) {
    Allowed or(double other, Limit limit, int which) {
      return other < volts ? new Allowed(other, limit, which) : this;
    }
  }

  /** The gain to set: full scale meets the clip point unless a driver would not bear it. */
  public Allowed gain(double clipV) {
    Allowed allowed = new Allowed(clipV, Limit.FULL_SCALE, -1);
    for (Borne one : borne) {
      allowed = allowed.or(one.byMovementV(), Limit.MOVEMENT, one.driver());
      if (!rmsLimiter) {
        allowed = allowed.or(one.byHeatV(), Limit.HEAT, one.driver());
      }
    }
    return allowed;
  }

  /** What ends the level with this trim, as a source voltage behind the trim. */
  public Allowed bearable(double clipV) {
    Allowed allowed = new Allowed(clipV / boost, Limit.CLIPPING, -1);
    for (Borne one : borne) {
      allowed =
          allowed
              .or(one.byMovementV(), Limit.MOVEMENT, one.driver())
              .or(one.byHeatV(), Limit.HEAT, one.driver());
    }
    return allowed;
  }

  /**
   * RMS limiter of the voice coils: the voltage at the terminals that gives the first driver its power,
   * V; null where what one bears is not known.
   */
  public Double limiterRmsV() {
    double least = Double.POSITIVE_INFINITY;
    for (int d = 0; d < borne.size(); d++) {
      double bears = borne.get(d).continuousW();
      if (Double.isNaN(bears)) {
        return null;
      }
      least = Math.min(least, Math.sqrt(bears / chain.ratedWPerSquareVolt(d)));
    }
    return least;
  }

  /** Peak limiter of the amplifier: that of its largest clean sine at the terminals, V. */
  public double limiterPeakV(double clipV) {
    return Math.sqrt(2) * clipV / chain.output().openOverLoaded();
  }

  /**
   * The largest source voltage behind the trim that is allowed for a sine at a frequency of the grid
   * that lasts.
   */
  public Allowed sineAllowed(int k, double clipV) {
    Allowed allowed =
        new Allowed(clipV / Math.max(SILENT, chain.filter(k).modulus()), Limit.CLIPPING, -1);
    for (int d = 0; d < borne.size(); d++) {
      Borne one = borne.get(d);
      double moved = one.xmaxMm() / drive.sineMm(d, k);
      double heated = Math.sqrt(one.continuousW() / drive.sineHeldW(d, k));
      allowed =
          allowed
              .or(
                  Double.isNaN(moved) ? Double.POSITIVE_INFINITY : moved,
                  Limit.MOVEMENT,
                  one.driver())
              .or(
                  Double.isNaN(heated) ? Double.POSITIVE_INFINITY : heated,
                  Limit.HEAT,
                  one.driver());
    }
    return allowed;
  }

  /**
   * What is left of a setting when the amplifier clips or the limiter works: the factor on its
   * voltage, 1 or below.
   */
  public double left(ChannelState state, double clipV) {
    double trimmed = state.trimmedV();
    double most = clipV / boost;
    if (rmsLimiter) {
      for (Borne one : borne) {
        most = Math.min(most, one.byHeatV());
      }
    }
    return trimmed <= most ? 1 : most / trimmed;
  }
}
