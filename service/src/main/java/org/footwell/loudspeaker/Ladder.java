package org.footwell.loudspeaker;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.footwell.calculation.Formula;
import org.footwell.calculation.Source;
import org.footwell.parts.LadderElement;
import org.footwell.physics.Impedance;
import org.footwell.physics.Phasor;

/**
 * A ladder of elements between an amplifier without output impedance and a load.
 *
 * @param elements from the amplifier to the load
 * @param load what it ends in
 */
public record Ladder(List<LadderElement> elements, Impedance load) {

  public static final Source KIRCHHOFF = Source.of("Kirchhoff's laws, complex impedances");

  /** Level at the load in dB, from both parts of the voltage at the amplifier over that at the load. */
  public static final Formula.Of2 LEVEL_DB =
      Formula.of("level_db", "20·lg(|1/(real + j·imaginary)|)", "dB", KIRCHHOFF)
          .with("real", "imaginary", (re, im) -> -20 * Math.log10(new Phasor(re, im).modulus()));

  public Ladder {
    elements = List.copyOf(elements);
  }

  /**
   * What a ladder does at one frequency.
   *
   * @param input impedance the amplifier sees, ohm
   * @param transfer voltage at the load over that at the amplifier
   */
  public record Response(Phasor input, Phasor transfer) {
    public double levelDb() {
      return 20 * Math.log10(transfer.modulus());
    }
  }

  /**
   * The response at a frequency in Hz, above 0. From one volt at the load back to the amplifier: a
   * shunt adds its current, a series element its voltage.
   */
  public Response at(double f) {
    Phasor voltage = Phasor.ONE;
    Phasor current = Phasor.ONE.over(load.at(f));
    for (int i = elements.size() - 1; i >= 0; i--) {
      LadderElement element = elements.get(i);
      if (element.shunt()) {
        current = current.plus(voltage.times(element.admittance(f)));
      } else {
        voltage = voltage.plus(current.times(element.impedance(f)));
      }
    }
    return new Response(voltage.over(current), Phasor.ONE.over(voltage));
  }

  public Impedance input() {
    return f -> at(f).input();
  }

  public double levelDb(double f) {
    return at(f).levelDb();
  }

  /** Resistance in ohm at zero frequency, infinite where a capacitor blocks. */
  public double dcOhm(double loadOhm) {
    return limitOhm(loadOhm, LadderElement::dcOhm);
  }

  /** Impedance in ohm far above all frequencies; the load counts as open, its coil blocks. */
  public double farAboveOhm() {
    return limitOhm(Double.POSITIVE_INFINITY, LadderElement::farAboveOhm);
  }

  private double limitOhm(double loadOhm, ToDoubleFunction<LadderElement> limit) {
    double ohm = loadOhm;
    for (int i = elements.size() - 1; i >= 0; i--) {
      double own = limit.applyAsDouble(elements.get(i));
      ohm = elements.get(i).shunt() ? LadderElement.parallel(ohm, own) : ohm + own;
    }
    return ohm;
  }
}
