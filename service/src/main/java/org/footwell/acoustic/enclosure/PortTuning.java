package org.footwell.acoustic.enclosure;

import org.footwell.calculation.Arithmetic;
import org.footwell.calculation.Formula;
import org.footwell.calculation.Source;
import org.footwell.parts.BoxPort;

/**
 * A port and the tuning it gives a box.
 *
 * @param area of all ports together, m²
 * @param length of each port itself, m
 * @param effectiveLength with its end corrections, m
 * @param displacementL of all ports with their walls, litre
 */
public record PortTuning(
    double fbHz, double area, double length, double effectiveLength, double displacementL) {

  static final Source HELMHOLTZ =
      Source.of(
          "L. L. Beranek, Acoustics (1954): Helmholtz resonator, acoustic mass of a tube and its"
              + " end corrections, 8·r/(3·π) flanged and 0.61·r free; H. Levine and J. Schwinger,"
              + " Physical Review 73 (1948) 383: 0.6133·r free");

  static final Formula.Of1 RADIUS =
      Formula.of("port_radius_m", "√(A/π)", "m", Source.DEFINITION)
          .with("A", area -> Math.sqrt(area / Math.PI));

  /** What both ends add to the length, m, from the radius of one port in m. */
  static final Formula.Of3 END_CORRECTION =
      Formula.of("end_correction_m", "r·(k_outer + k_inner)", "m", HELMHOLTZ)
          .with("r", "k_outer", "k_inner", (r, outer, inner) -> r * (outer + inner));

  /** Tuning in Hz from c in m/s, area of all ports in m², volume in litre and moving length in m. */
  static final Formula.Of4 TUNING =
      Formula.of("fb_hz", "c/(2·π)·√(A/(V/1000·L))", "Hz", HELMHOLTZ)
          .with(
              "c",
              "A",
              "V",
              "L",
              (c, a, litre, l) -> c / (2 * Math.PI) * Math.sqrt(a / (litre / 1000 * l)));

  /** Moving length in m for a tuning: the inverse of {@link #TUNING}. */
  static final Formula.Of4 MOVING_LENGTH =
      Formula.of("effective_length_m", "A·c²/((2·π·fb)²·V/1000)", "m", HELMHOLTZ)
          .with(
              "c",
              "A",
              "V",
              "fb",
              (c, a, litre, fb) -> a * c * c / (4 * Math.PI * Math.PI * fb * fb * (litre / 1000)));

  static final Formula.Of2 OWN_LENGTH =
      Formula.of("length_m", "effective length − end correction", "m", HELMHOLTZ)
          .with("effective length", "end correction", (all, ends) -> all - ends);

  static final Formula.Of2 ALL_LENGTH =
      Formula.of("effective_length_m", "length + end correction", "m", HELMHOLTZ)
          .with("length", "end correction", Double::sum);

  /** First resonance in Hz of a pipe open at both ends. */
  static final Formula.Of2 PIPE_RESONANCE =
      Formula.of("port_resonance_hz", "c/(2·L)", "Hz", Source.of("Half-wave resonance of a tube"))
          .with("c", "L", (c, length) -> c / (2 * length));

  /** Tuning in Hz that a port of known length gives a volume in litre, with c in m/s. */
  public static double tuningHz(BoxPort port, double volumeL, double c) {
    double ends = ends(port, Arithmetic.SILENT);
    return TUNING.at(c, area(port), volumeL, ALL_LENGTH.at(port.lengthMm() / 1000, ends));
  }

  /** Tuning in Hz of a volume in litre by ends alone: below it a port of some length brings it. */
  static double limitHz(BoxPort port, double volumeL, double c) {
    return TUNING.at(c, area(port), volumeL, ends(port, Arithmetic.SILENT));
  }

  private static double area(BoxPort port) {
    return port.count() * port.areaM2();
  }

  private static double ends(BoxPort port, Arithmetic steps) {
    return steps.apply(
        END_CORRECTION,
        steps.apply(RADIUS, port.areaM2()),
        port.outerEnd().correction(),
        port.innerEnd().correction());
  }

  /**
   * A port, its tuning or its length found.
   *
   * @param volume of air in the box, litre
   * @param wantedHz tuning below its limit that the port shall give, or null where its length decides
   * @param c speed of sound, m/s
   */
  static PortTuning of(BoxPort port, double volume, Double wantedHz, double c, Arithmetic steps) {
    double area = area(port);
    double ends = ends(port, steps);
    boolean tuned = wantedHz != null;
    double moving =
        tuned
            ? steps.apply(MOVING_LENGTH, c, area, volume, wantedHz)
            : steps.apply(ALL_LENGTH, port.lengthMm() / 1000, ends);
    double own = tuned ? steps.apply(OWN_LENGTH, moving, ends) : port.lengthMm() / 1000;
    double fb = tuned ? wantedHz : steps.apply(TUNING, c, area, volume, moving);
    double displacement = 1000 * port.count() * port.outerAreaM2() * own;
    return new PortTuning(fb, area, own, moving, displacement);
  }
}
