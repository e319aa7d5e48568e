package org.footwell.signal;

import java.util.List;
import org.footwell.reference.OutsideCheck;
import org.footwell.reference.OutsideChecks;
import org.footwell.reference.ReferenceTable.Row;

class SignalOutsideChecks extends OutsideChecks {

  private static final int SIZE = 64;

  @Override
  public List<OutsideCheck> checks() {
    return List.of(
        OutsideCheck.of("arrival-times", "signal processing", "scipy-signal-vectors.csv")
            .printed("value")
            .computed(SignalOutsideChecks::computed)
            .within(1e-9));
  }

  /** The same numbers as the script makes. */
  private static double[] noise() {
    double[] noise = new double[SIZE];
    long state = 12345;
    for (int n = 0; n < SIZE; n++) {
      state = (1103515245 * state + 12345) % (1L << 31);
      noise[n] = (double) state / (1 << 30) - 1;
    }
    return noise;
  }

  private static double computed(Row row) {
    int index = (int) row.number("index");
    Spectrum spectrum = Spectrum.of(noise(), SIZE);
    return switch (row.text("quantity")) {
      case "rfft_re" -> spectrum.re(index);
      case "rfft_im" -> spectrum.im(index);
      case "hilbert_envelope" -> spectrum.analytic().envelope()[index];
      case "hann" -> Window.HANN.periodic(16)[index];
      case "blackman" -> Window.BLACKMAN.periodic(16)[index];
      case "blackmanharris" -> Window.BLACKMAN_HARRIS.periodic(16)[index];
      case "chirp" -> new ExponentialSweep(50, 2000, 0.5).at(index / 8000.0);
      case "minimum_phase" -> minimumPhase()[index];
      case "band_energy" -> BandPower.energy(spectrum, SIZE, 5.5, 11.5);
      default -> throw new IllegalArgumentException(row.toString());
    };
  }

  private static double[] minimumPhase() {
    Spectrum taps = Spectrum.of(new double[] {0.1, 0.4, 1, 0.4, 0.1}, SIZE);
    double[] logarithms = new double[taps.bins()];
    for (int k = 0; k < logarithms.length; k++) {
      logarithms[k] = 0.5 * Math.log(taps.power(k));
    }
    return MinimumPhase.of(logarithms).signal();
  }
}
