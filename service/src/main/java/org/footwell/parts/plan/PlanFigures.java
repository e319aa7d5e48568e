package org.footwell.parts.plan;

/**
 * Figures that follow from a plan by models above its records, for requests that ask for one; null where
 * the plan does not have what they need.
 */
public interface PlanFigures {

  /** Voltage at the battery while the engine runs, V. */
  Double supplyV();

  /** Rated impedance of what hangs on a channel, ohm; of branches the lowest. */
  double networkOhm(int channel);

  /** Rated impedance of a branch, ohm. */
  double branchOhm(int channel, int branch);

  /** What the output of a channel sees: the same with the cable, ohm. */
  double loadOhm(int channel);

  /** Clean sine power a channel puts out at {@link #supplyV}, W. */
  Double outputW(int channel);

  /** Supply voltage that the powers of an amplifier are stated for, V. */
  double statedV(int amplifier);

  /** Clean sine power a channel puts out at that voltage, W. */
  Double statedW(int channel);

  /** Voltage of {@link #outputW} at the terminals of the amplifier, V RMS. */
  Double outputV(int channel);

  /** What of it gets to a driver, all its coils together, W. */
  Double driverW(int driver);

  /** Continuous power of the network as a whole at which its first driver reaches its own, W. */
  Double bearableW(int channel);
}
