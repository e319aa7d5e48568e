package org.footwell.parts;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import org.footwell.calculation.Built;
import org.footwell.physics.Phasor;

/** One step of a ladder: a capacitor, a coil, a resistor, or several of them together. */
@Built
public record LadderElement(
    @Schema(description = "In the way to the driver, or across it and all that follows") @NotNull
        Place place,
    @Schema(description = "Capacitance, µF") @DecimalMin("0.001") @DecimalMax("100000")
        Double capacitanceUf,
    @Schema(description = "Inductance, mH") @DecimalMin("0.0001") @DecimalMax("1000")
        Double inductanceMh,
    @Schema(description = "DC resistance of the coil, ohm; 0 is an ideal coil")
        @DecimalMin("0")
        @DecimalMax("1000")
        Double coilOhm,
    @Schema(description = "Resistance of a resistor, ohm")
        @DecimalMin("0.001")
        @DecimalMax("100000")
        Double resistanceOhm,
    @Schema(
            description =
                "How the parts of this element are wired to each other; of no effect on a single"
                    + " one")
        Wiring wiring) {

  public LadderElement {
    coilOhm = coilOhm == null ? Double.valueOf(0) : coilOhm;
    wiring = wiring == null ? Wiring.IN_SERIES : wiring;
  }

  /** Where an element sits in the ladder. */
  public enum Place {
    /** Between the amplifier's side and the driver's. */
    SERIES,
    /** Across both conductors. */
    SHUNT
  }

  /** How the parts of one element are wired to each other. */
  public enum Wiring {
    /** One after the other. */
    IN_SERIES,
    /** Side by side; the coil's resistance stays with the coil. */
    IN_PARALLEL
  }

  public static LadderElement capacitor(Place place, double capacitanceUf) {
    return new LadderElement(place, capacitanceUf, null, null, null, null);
  }

  public static LadderElement coil(Place place, double inductanceMh) {
    return new LadderElement(place, null, inductanceMh, null, null, null);
  }

  public static LadderElement resistor(Place place, double resistanceOhm) {
    return new LadderElement(place, null, null, null, resistanceOhm, null);
  }

  public boolean empty() {
    return capacitanceUf == null && inductanceMh == null && resistanceOhm == null;
  }

  public boolean shunt() {
    return place == Place.SHUNT;
  }

  public boolean inParallel() {
    return wiring == Wiring.IN_PARALLEL;
  }

  /** Whether a coil and a capacitor meet without any resistance: a loss-free resonance. */
  public boolean lossless() {
    boolean resonant = capacitanceUf != null && inductanceMh != null;
    boolean damped = coilOhm > 0 || resistanceOhm != null;
    return resonant && !damped;
  }

  /** Impedance in ohm at a frequency in Hz. */
  public Phasor impedance(double f) {
    double w = 2 * Math.PI * f;
    return inParallel() ? Phasor.ONE.over(sideBySide(w)) : oneAfterTheOther(w);
  }

  /** Admittance in siemens at a frequency in Hz. */
  public Phasor admittance(double f) {
    double w = 2 * Math.PI * f;
    return inParallel() ? sideBySide(w) : Phasor.ONE.over(oneAfterTheOther(w));
  }

  /** Impedance of the parts in series. */
  private Phasor oneAfterTheOther(double w) {
    double resistance = coilOhm + (resistanceOhm == null ? 0 : resistanceOhm);
    double reactance = 0;
    if (inductanceMh != null) {
      reactance += w * inductanceMh / 1e3;
    }
    if (capacitanceUf != null) {
      reactance -= 1e6 / (w * capacitanceUf);
    }
    return new Phasor(resistance, reactance);
  }

  /** Admittance of the parts in parallel. */
  private Phasor sideBySide(double w) {
    Phasor admittance = new Phasor(resistanceOhm == null ? 0 : 1 / resistanceOhm, 0);
    if (inductanceMh != null) {
      admittance = admittance.plus(Phasor.ONE.over(new Phasor(coilOhm, w * inductanceMh / 1e3)));
    }
    if (capacitanceUf != null) {
      admittance = admittance.plus(new Phasor(0, w * capacitanceUf / 1e6));
    }
    return admittance;
  }

  /** Resistance in ohm at zero frequency; infinite where a capacitor blocks. */
  public double dcOhm() {
    return limit(capacitanceUf != null, inductanceMh != null, coilOhm);
  }

  /** Impedance in ohm far above all frequencies; infinite where a coil blocks. */
  public double farAboveOhm() {
    return limit(inductanceMh != null, capacitanceUf != null, 0);
  }

  /** A limit at which one kind of part blocks and the other lets through with a resistance. */
  private double limit(boolean blocking, boolean passing, double passingOhm) {
    double resistor = resistanceOhm == null ? 0 : resistanceOhm;
    if (!inParallel()) {
      return blocking ? Double.POSITIVE_INFINITY : resistor + (passing ? passingOhm : 0);
    }
    double open = Double.POSITIVE_INFINITY;
    return parallel(passing ? passingOhm : open, resistanceOhm == null ? open : resistanceOhm);
  }

  /** Two resistances side by side, either of which may be 0 or infinite. */
  public static double parallel(double one, double other) {
    if (one == 0 || other == 0) {
      return 0;
    }
    if (Double.isInfinite(one)) {
      return other;
    }
    return Double.isInfinite(other) ? one : one * other / (one + other);
  }
}
