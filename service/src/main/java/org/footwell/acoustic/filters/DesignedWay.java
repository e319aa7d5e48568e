package org.footwell.acoustic.filters;

import java.util.List;
import org.footwell.calculation.Built;
import org.footwell.parts.Filter;
import org.footwell.signal.Biquad;
import org.footwell.signal.Cascade;
import org.footwell.signal.CirclePoint;
import org.footwell.signal.Response;

/**
 * A way with its digital sections.
 *
 * @param index its place among the ways
 * @param heightM of its acoustic centre above the reference height
 * @param behindM how far that is behind the plane the listening distance is counted from
 * @param parts its sections in the order of the signal
 * @param exact the sections as calculated
 * @param rounded the sections as the device holds them
 * @param factor amplitude of gain and polarity
 * @param delaySamples delay in samples
 */
@Built
record DesignedWay(
    int index,
    String id,
    Filter highPass,
    Filter lowPass,
    double heightM,
    double behindM,
    List<Part> parts,
    Cascade exact,
    Cascade rounded,
    double factor,
    double delaySamples) {

  /** Where the middle is looked for of a way that is open on a side, Hz. */
  private static final double LOWEST_HZ = 20;

  private static final double HIGHEST_HZ = 20000;

  /**
   * One section.
   *
   * @param pointer where in the request it comes from
   * @param frequencyHz the frequency it is designed for
   */
  record Part(String pointer, double frequencyHz, Biquad exact, Biquad rounded) {}

  int bit() {
    return 1 << index;
  }

  /** Corner of its high-pass, Hz; 0 without one. */
  double bottomHz() {
    return highPass == null ? 0 : highPass.frequencyHz();
  }

  /** Corner of its low-pass, Hz; infinite without one. */
  double topHz() {
    return lowPass == null ? Double.POSITIVE_INFINITY : lowPass.frequencyHz();
  }

  /** The middle of its band, Hz. */
  double middleHz() {
    return Math.sqrt(Math.max(LOWEST_HZ, bottomHz()) * Math.min(HIGHEST_HZ, topHz()));
  }

  String pointer() {
    return "/ways/" + index;
  }

  /** Filters, gain, polarity and delay. */
  Response at(CirclePoint p) {
    return exact.at(p).scaled(factor, delaySamples, p);
  }

  double levelDb(CirclePoint p) {
    return Response.levelDb(exact.power(p) * factor * factor);
  }

  double roundedLevelDb(CirclePoint p) {
    return Response.levelDb(rounded.power(p) * factor * factor);
  }
}
