package org.footwell.parts.plan;

/**
 * Figures that follow from a plan by models above its records, for requests that ask for one; null where
 * the plan does not have what they need.
 */
public interface PlanFigures {

  /** Voltage at the battery while the engine runs and nothing sags, V. */
  Double engineV();

  /**
   * Voltage at an amplifier with the programme while cruising, V; without a supply that its powers are
   * stated for.
   */
  double operatingV(int amplifier);

  /** Supply voltage that the powers of an amplifier are stated for, V. */
  double statedV(int amplifier);

  /** Rated impedance of what hangs on a channel, ohm; of branches the lowest. */
  double networkOhm(int channel);

  /** Rated impedance of a branch, ohm. */
  double branchOhm(int channel, int branch);

  /** What the output of a channel sees: the same with the cable, ohm. */
  double loadOhm(int channel);

  /** Clean sine power a channel puts out at a supply voltage, W. */
  double cleanW(int channel, double supplyV);

  /** Voltage of that power at {@link #operatingV} at the terminals of the amplifier, V RMS. */
  double outputV(int channel);

  /** Most of it that gets to a driver, all its coils together, W. */
  Double driverW(int driver);

  /**
   * Level at the main seat of a sine with the peaks that the programme has in a channel, dB SPL, with the
   * settings of the plan.
   */
  Double sineDbSpl(int channel);

  /** Continuous power of the network as a whole at which its first driver reaches its own, W. */
  Double bearableW(int channel);

  /** Current of an amplifier with a full sine on all channels while cruising, A. */
  Double fullSineA(int amplifier);
}
