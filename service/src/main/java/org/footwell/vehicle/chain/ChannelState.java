package org.footwell.vehicle.chain;

/**
 * How one channel is set.
 *
 * @param sourceV RMS voltage of its source for a sine whose peaks are those of the programme, filters
 *     flat and without trim
 * @param trimDb 0 or less
 * @param polarity 1 or −1, as wired and as set together
 * @param delayMs by which it waits, the delay it has already included
 */
public record ChannelState(double sourceV, double trimDb, int polarity, double delayMs) {

  /** The same with another trim. */
  public ChannelState trimmed(double db) {
    return new ChannelState(sourceV, db, polarity, delayMs);
  }

  /** The same with another delay and polarity. */
  public ChannelState delayed(double ms, int turned) {
    return new ChannelState(sourceV, trimDb, turned, ms);
  }

  /** Source voltage behind the trim, V. */
  public double trimmedV() {
    return sourceV * Math.pow(10, trimDb / 20);
  }
}
