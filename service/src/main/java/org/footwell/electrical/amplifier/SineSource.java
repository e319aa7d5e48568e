package org.footwell.electrical.amplifier;

/** A source of clean sine power, however it was described: pure and immutable. */
public interface SineSource {

  /**
   * Clean sine power into a load.
   *
   * @param loadOhm above 0, as connected: the whole load of a bridge
   * @param supplyV supply voltage of the vehicle, V
   */
  Delivery into(double loadOhm, double supplyV);

  /**
   * Clean sine power and the bounds it is known within.
   *
   * @param powerW what to count on
   * @param lowW smallest likely power
   * @param highW largest likely power
   */
  record Delivery(double powerW, double lowW, double highW) {

    static Delivery exactly(double powerW) {
      return new Delivery(powerW, powerW, powerW);
    }

    static Delivery between(double powerW, double oneBound, double otherBound) {
      return new Delivery(powerW, Math.min(oneBound, otherBound), Math.max(oneBound, otherBound));
    }

    /** As much of it as stays below {@code most} watts. */
    Delivery atMost(double most) {
      return new Delivery(Math.min(powerW, most), Math.min(lowW, most), Math.min(highW, most));
    }

    /** The same times a ratio of powers. */
    Delivery times(double ratio) {
      return new Delivery(powerW * ratio, lowW * ratio, highW * ratio);
    }
  }
}
