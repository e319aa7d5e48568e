package org.footwell.vehicle.chain;

/**
 * An amplifier as its supply sees it.
 *
 * @param idleW drawn switched on but silent
 * @param averageEfficiency output over input power with the programme, idleW left out
 * @param fullEfficiency the same with a full sine
 * @param regulated whether it draws constant power with a full sine too
 * @param ratedV supply voltage its powers are stated for
 * @param loopOhm from the battery and back
 */
public record FedAmplifier(
    double idleW,
    double averageEfficiency,
    double fullEfficiency,
    boolean regulated,
    double ratedV,
    double loopOhm) {

  /** An amplifier of which nothing is known but the voltage its powers are for: it draws nothing. */
  public static FedAmplifier unknown(double ratedV) {
    return new FedAmplifier(0, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, true, ratedV, 0);
  }

  /** Drawn with the programme, W, from its mean output in W. */
  public double meanW(double outputW) {
    return idleW + outputW / averageEfficiency;
  }

  /**
   * What a cable is sized for, W: music at a third of full power on every channel. Common practice, no
   * source; the programme of a plan draws less, its peaks more.
   *
   * @param outputW clean power of all channels at the rated supply voltage
   */
  public double thirdW(double outputW) {
    return idleW + outputW / 3 / fullEfficiency;
  }

  /** Drawn with a full sine at the rated supply voltage, W. */
  public double sineW(double outputW) {
    return idleW + outputW / fullEfficiency;
  }
}
