package org.footwell.vehicle.chain;

import static org.junit.jupiter.api.Assertions.assertTrue;

import org.footwell.parts.Filter;
import org.footwell.physics.AnalogFilter;
import org.footwell.physics.ProgrammeSpectrum;
import org.junit.jupiter.api.Test;

/** What is lost by looking at a few places of each third octave only. */
class GridTest {

  private static final int FINE = 32;

  @Test
  void sumsOverTheSpectrumAreThoseOfAFineGrid() {
    ProgrammeSpectrum spectrum = ProgrammeSpectrum.simulated();
    Grid grid = Grid.of(spectrum);
    Grid fine = new Grid(spectrum, FINE);
    double worst = 0;
    String which = "";
    for (int order = 1; order <= 8; order++) {
      for (double corner = 25; corner <= 12_000; corner *= 1.07) {
        for (Filter.Kind kind : Filter.Kind.values()) {
          Filter filter = Filter.of(kind, order, corner);
          if (!filter.possible()) {
            continue;
          }
          for (boolean high : new boolean[] {true, false}) {
            double apart =
                Math.abs(10 * Math.log10(share(grid, filter, high) / share(fine, filter, high)));
            if (apart > worst) {
              worst = apart;
              which = kind + " " + order + " " + corner + " " + high;
            }
          }
        }
      }
    }
    assertTrue(worst < 0.01, worst + " dB: " + which);
  }

  private static double share(Grid grid, Filter filter, boolean high) {
    AnalogFilter response = high ? filter.highPass() : filter.lowPass();
    double sum = 0;
    for (int k = 0; k < grid.size(); k++) {
      sum += grid.share(k) * response.at(grid.hz(k)).square();
    }
    return sum;
  }
}
