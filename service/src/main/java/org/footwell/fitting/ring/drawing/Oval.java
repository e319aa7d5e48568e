package org.footwell.fitting.ring.drawing;

import io.swagger.v3.oas.annotations.media.Schema;
import org.footwell.calculation.Formula;
import org.footwell.calculation.Source;

/** An ellipse around the centre with its axes across and up; round when both are equal. */
public record Oval(
    @Schema(description = "Width, mm") double widthMm,
    @Schema(description = "Height, mm; equal to the width when round") double heightMm) {

  public static final Source ELLIPSE = Source.of("Area of an ellipse, plane geometry");
  public static final Source RAMANUJAN =
      Source.of(
          "S. Ramanujan, Modular equations and approximations to pi, Quarterly Journal of"
              + " Mathematics 45 (1914), 350-372, last formula: perimeter of an ellipse");

  /** Area of an ellipse in mm² of its axes in mm. */
  public static final Formula.Of2 AREA =
      Formula.of("outline_area_mm2", "π/4·w·h", "mm²", ELLIPSE)
          .with("w", "h", (w, h) -> Math.PI / 4 * w * h);

  /** Perimeter of an ellipse in mm; exact for a circle, within 0.005 % up to axes of 5 to 1. */
  public static final Formula.Of2 PERIMETER =
      Formula.of(
              "perimeter_mm",
              "π/2·(w + h)·(1 + 3·k/(10 + √(4 − 3·k))), k = ((w − h)/(w + h))²",
              "mm",
              RAMANUJAN)
          .with("w", "h", Oval::perimeter);

  private static final int MOST_HALVINGS = 200;

  /**
   * Nearer to the long axis than this share of the short one counts as on it: halving loses as many
   * digits there as the point is near.
   */
  private static final double ON_AXIS = 1e-8;

  /** A circle. */
  public static Oval round(double diameterMm) {
    return new Oval(diameterMm, diameterMm);
  }

  /** Whether it is a circle. */
  public boolean circular() {
    return widthMm == heightMm;
  }

  /** The same, so much larger on every side. */
  public Oval wider(double mm) {
    return new Oval(widthMm + 2 * mm, heightMm + 2 * mm);
  }

  /** The same shape, so many times as large. */
  public Oval scaled(double times) {
    return new Oval(widthMm * times, heightMm * times);
  }

  /** How many times as large the same shape is whose curve runs through a point. */
  public double timesThrough(double x, double y) {
    return 2 * Math.hypot(x / widthMm, y / heightMm);
  }

  /** The smallest around both. */
  public Oval around(Oval other) {
    return new Oval(Math.max(widthMm, other.widthMm), Math.max(heightMm, other.heightMm));
  }

  /** Least distance on an axis between this and one within; negative where it stands out. */
  public double beyond(Oval inner) {
    return Math.min(widthMm - inner.widthMm, heightMm - inner.heightMm) / 2;
  }

  private static double perimeter(double w, double h) {
    double k = (w - h) * (w - h) / ((w + h) * (w + h));
    return Math.PI / 2 * (w + h) * (1 + 3 * k / (10 + Math.sqrt(4 - 3 * k)));
  }

  /** Distance of a point from the curve, mm; positive inside, negative outside. */
  public double inside(double x, double y) {
    double a = widthMm / 2;
    double b = heightMm / 2;
    if (circular()) {
      return a - Math.hypot(x, y);
    }
    double distance =
        a > b ? distance(a, b, Math.abs(x), Math.abs(y)) : distance(b, a, Math.abs(y), Math.abs(x));
    return x * x / (a * a) + y * y / (b * b) <= 1 ? distance : -distance;
  }

  /**
   * Distance from an ellipse with semi-axes a above b, in its first quadrant: the foot of the
   * perpendicular is found by halving, which always ends (D. Eberly, Distance from a Point to an
   * Ellipse, Geometric Tools; from memory, not checked against a copy).
   */
  private static double distance(double a, double b, double x, double y) {
    if (y < ON_AXIS * b) {
      double foot = a * x / (a * a - b * b);
      return foot < 1 ? Math.hypot(a * foot - x, b * Math.sqrt(1 - foot * foot)) : Math.abs(x - a);
    }
    double ratio = a / b * (a / b);
    double u = x / a;
    double v = y / b;
    double low = v - 1;
    double high = u * u + v * v < 1 ? 0 : Math.hypot(ratio * u, v) - 1;
    double t = (low + high) / 2;
    for (int i = 0; i < MOST_HALVINGS && t != low && t != high; i++) {
      double across = ratio * u / (t + ratio);
      double up = v / (t + 1);
      if (across * across + up * up > 1) {
        low = t;
      } else {
        high = t;
      }
      t = (low + high) / 2;
    }
    return Math.hypot(ratio * x / (t + ratio) - x, y / (t + 1) - y);
  }
}
