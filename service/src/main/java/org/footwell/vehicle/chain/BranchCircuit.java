package org.footwell.vehicle.chain;

import java.util.List;
import org.footwell.loudspeaker.Ladder;
import org.footwell.parts.LadderElement;
import org.footwell.physics.AnalogFilter;
import org.footwell.physics.Phasor;

/**
 * What lies between the terminals of a loudspeaker and some of its coils: a ladder of parts, or where
 * they are not known the filters that are stated, taken as free of loss. Such a filter hands all power
 * it takes on: with the ratio H of its output to its input the amplifier meets |H|² of the coils'
 * admittance.
 *
 * @param elements none for a plain wire or stated filters
 * @param stated none for a ladder
 * @param padGain what a stated pad leaves of the voltage, above 0 to 1
 */
public record BranchCircuit(
    List<LadderElement> elements, List<AnalogFilter> stated, double padGain, CoilTree tree) {

  /**
   * The branch at a frequency.
   *
   * @param admittance at the terminals, S
   * @param transfer voltage across the coils over that at the terminals
   */
  public record Solved(Phasor admittance, Phasor transfer) {}

  Solved at(double f, Phasor[] loads) {
    Phasor coils = tree.ohm(loads);
    if (!elements.isEmpty()) {
      Ladder.Response response = new Ladder(elements, any -> coils).at(f);
      return new Solved(response.input().inverse(), response.transfer());
    }
    if (stated.isEmpty() && padGain == 1) {
      return new Solved(coils.inverse(), Phasor.ONE);
    }
    Phasor transfer = new Phasor(padGain, 0);
    double taken = padGain;
    for (AnalogFilter filter : stated) {
      Phasor ratio = filter.at(f);
      transfer = transfer.times(ratio);
      taken *= ratio.square();
    }
    return new Solved(coils.inverse().times(taken), transfer);
  }
}
