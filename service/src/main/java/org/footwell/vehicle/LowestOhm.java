package org.footwell.vehicle;

import java.util.function.DoubleUnaryOperator;
import org.footwell.electrical.impedance.Extremes;
import org.footwell.vehicle.chain.ChannelChain;
import org.footwell.vehicle.chain.Grid;

/** The lowest modulus of a channel from 20 Hz to 20 kHz: on the grid, then exactly beside it. */
final class LowestOhm {

  private static final double FROM_HZ = 20;
  private static final double TO_HZ = 20_000;

  private LowestOhm() {}

  static Extremes.Place of(ChannelChain chain, boolean withCable) {
    DoubleUnaryOperator modulus = f -> chain.ohmAt(f, withCable).modulus();
    Grid grid = chain.grid();
    int first = 0;
    while (grid.hz(first) <= FROM_HZ) {
      first++;
    }
    int last = grid.size() - 1;
    while (grid.hz(last) >= TO_HZ) {
      last--;
    }
    double[] hz = new double[last - first + 3];
    double[] ohm = new double[hz.length];
    for (int k = first; k <= last; k++) {
      hz[k - first + 1] = grid.hz(k);
      ohm[k - first + 1] = (withCable ? chain.terminalOhm(k) : chain.networkOhm(k)).modulus();
    }
    hz[0] = FROM_HZ;
    ohm[0] = modulus.applyAsDouble(FROM_HZ);
    hz[hz.length - 1] = TO_HZ;
    ohm[hz.length - 1] = modulus.applyAsDouble(TO_HZ);
    return Extremes.lowest(modulus, hz, ohm);
  }
}
