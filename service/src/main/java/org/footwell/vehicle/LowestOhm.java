package org.footwell.vehicle;

import java.util.function.DoubleUnaryOperator;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import org.footwell.electrical.impedance.Extremes;
import org.footwell.physics.Phasor;
import org.footwell.vehicle.chain.ChannelChain;
import org.footwell.vehicle.chain.Grid;

/**
 * The lowest modulus of a channel from 20 Hz to 20 kHz: on the grid, then exactly beside it.
 *
 * @param alone of the loudspeaker
 * @param withCable what the amplifier meets
 */
record LowestOhm(Extremes.Place alone, Extremes.Place withCable) {

  private static final double FROM_HZ = 20;
  private static final double TO_HZ = 20_000;

  static LowestOhm of(ChannelChain chain) {
    Grid grid = chain.grid();
    int[] inside =
        IntStream.range(0, grid.size())
            .filter(k -> grid.hz(k) > FROM_HZ && grid.hz(k) < TO_HZ)
            .toArray();
    return new LowestOhm(
        lowest(grid, inside, chain::networkOhm, f -> chain.ohmAt(f, false).modulus()),
        lowest(grid, inside, chain::terminalOhm, f -> chain.ohmAt(f, true).modulus()));
  }

  private static Extremes.Place lowest(
      Grid grid, int[] inside, IntFunction<Phasor> onGrid, DoubleUnaryOperator modulus) {
    double[] hz = new double[inside.length + 2];
    double[] ohm = new double[hz.length];
    for (int i = 0; i < inside.length; i++) {
      hz[i + 1] = grid.hz(inside[i]);
      ohm[i + 1] = onGrid.apply(inside[i]).modulus();
    }
    int last = hz.length - 1;
    hz[0] = FROM_HZ;
    ohm[0] = modulus.applyAsDouble(FROM_HZ);
    hz[last] = TO_HZ;
    ohm[last] = modulus.applyAsDouble(TO_HZ);
    return Extremes.lowest(modulus, hz, ohm);
  }
}
