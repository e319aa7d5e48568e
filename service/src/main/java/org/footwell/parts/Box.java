package org.footwell.parts;

import org.footwell.calculation.Built;

/**
 * The box of a driver without its port, as far as it is known, one and the same in every request: what
 * a calculation cannot do without, or has no use for, it says at its place.
 */
@Built
public record Box(
    Double volumeL,
    Double fbHz,
    Double qtc,
    Double rippleDb,
    Double fillFactor,
    Double ql,
    Double qa,
    Double qp,
    Double driverDisplacementL,
    Double bracingL,
    Double spaceL,
    Double longestInsideMm) {

  public Box {
    driverDisplacementL = driverDisplacementL == null ? Double.valueOf(0) : driverDisplacementL;
    bracingL = bracingL == null ? Double.valueOf(0) : bracingL;
  }

  /** Q of the leaks of a vented box where none is given (Small's usual box). */
  private static final double USUAL_QL = 7;

  /** Q of the leaks of a vented box, which always has some. */
  public double ventedQl() {
    return ql == null ? USUAL_QL : ql;
  }

  /** How much larger its fill makes the volume appear. */
  public double fill() {
    return fillFactor == null ? 1 : fillFactor;
  }

  /** Volume in litre with driver and bracing in it, from that of the air. */
  public double grossL(double netL) {
    return netL + driverDisplacementL + bracingL;
  }

  /** A closed box of a volume in litre, or without one a box of which nothing is known. */
  public static Box closed(Double volumeL) {
    return BoxBuilder.builder().volumeL(volumeL).build();
  }

  /** A vented box of a volume in litre and a tuning in Hz. */
  public static Box vented(double volumeL, double fbHz) {
    return BoxBuilder.builder().volumeL(volumeL).fbHz(fbHz).build();
  }
}
