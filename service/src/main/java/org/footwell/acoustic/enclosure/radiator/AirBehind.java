package org.footwell.acoustic.enclosure.radiator;

/**
 * The air behind a cone, in acoustic SI units: a compliance with the losses of fill in it, and beside
 * it a leak and ports.
 *
 * @param compliance of the air in the box, m³/Pa
 * @param absorption resistance in series with it, Pa·s/m³; 0 for none
 * @param leak conductance of all leaks, m³/(Pa·s); 0 for none
 * @param portMass acoustic mass of all ports, kg/m⁴; infinite for none
 * @param portLoss resistance in series with it, Pa·s/m³
 * @param portArea of all ports together, m²; 0 for none
 * @param leakHeard whether what leaks out reaches the listener, or ends elsewhere
 */
public record AirBehind(
    double compliance,
    double absorption,
    double leak,
    double portMass,
    double portLoss,
    double portArea,
    boolean leakHeard) {

  /**
   * A closed volume.
   *
   * @param w0 angular frequency at which the Qs count
   * @param ql Q of the leaks, or null
   * @param qa Q of the absorption, or null
   */
  public static AirBehind closed(
      double compliance, double w0, Double ql, Double qa, boolean leakHeard) {
    return new AirBehind(
        compliance,
        seriesResistance(w0, compliance, qa),
        ql == null ? 0 : w0 * compliance / ql,
        Double.POSITIVE_INFINITY,
        0,
        0,
        leakHeard);
  }

  /** A volume with ports that tune it to the angular frequency w0. */
  public static AirBehind vented(
      double compliance, double w0, Double ql, Double qa, Double qp, double portArea) {
    AirBehind box = closed(compliance, w0, ql, qa, true);
    return new AirBehind(
        compliance,
        box.absorption,
        box.leak,
        1 / (w0 * w0 * compliance),
        seriesResistance(w0, compliance, qp),
        portArea,
        true);
  }

  boolean isVented() {
    return portArea > 0;
  }

  private static double seriesResistance(double w0, double compliance, Double q) {
    return q == null ? 0 : 1 / (q * w0 * compliance);
  }
}
