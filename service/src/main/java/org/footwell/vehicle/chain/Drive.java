package org.footwell.vehicle.chain;

/**
 * What a programme makes of one channel: its mean power over frequency, and how far its cones move. The
 * programme's RMS is the crest factor below its peaks, over the whole band and before the filters.
 */
public final class Drive {

  private final ChannelChain chain;
  private final GridProgramme programme;

  public Drive(ChannelChain chain, double crestFactorDb) {
    this.chain = chain;
    programme = GridProgramme.of(chain.grid(), crestFactorDb);
  }

  /** What is played, the same on all channels. */
  GridProgramme programme() {
    return programme;
  }

  /** Mean square of the programme at a frequency of the grid, filters included, for 1 V of source. */
  double square(int k) {
    return programme.square(k) * chain.filter(k).square();
  }

  private interface At {
    double at(int k);
  }

  private double sum(At quantity) {
    double sum = 0;
    for (int k = 0; k < chain.grid().size(); k++) {
      sum += square(k) * quantity.at(k);
    }
    return sum;
  }

  /** Mean power the amplifier gives, W for a source of 1 V. */
  public double terminalW() {
    return sum(chain::terminalW);
  }

  /** Mean power a driver gets, held against its rated impedance, W for a source of 1 V. */
  public double heldW(int d) {
    return sum(k -> chain.heldW(d, k));
  }

  /** Mean heat in the voice coils of a driver, W for a source of 1 V. */
  public double coilW(int d) {
    return sum(k -> chain.coilW(d, k));
  }

  /**
   * Most power a clean sine gives a driver, held against its rated impedance, W for a source that clips
   * at 1 V: what filters lift clips earlier.
   */
  public double mostHeldW(int d) {
    double most = 0;
    for (int k = 0; k < chain.grid().size(); k++) {
      most = Math.max(most, Math.min(1, chain.filter(k).square()) * chain.heldW(d, k));
    }
    return most;
  }

  /** Power of a sine at a frequency of the grid, against the rated impedance, W for 1 V of source. */
  public double sineHeldW(int d, int k) {
    return chain.filter(k).square() * chain.heldW(d, k);
  }

  /** Peak displacement with the programme, RMS times crest factor, mm for a source of 1 V. */
  public double programmeMm(int d) {
    return programme.crest() * Math.sqrt(sum(k -> chain.movedMm(d, k) * chain.movedMm(d, k)) / 2);
  }

  /** Peak displacement with a full-scale sine at a frequency of the grid, mm for a source of 1 V. */
  public double sineMm(int d, int k) {
    return chain.filter(k).modulus() * chain.movedMm(d, k);
  }
}
