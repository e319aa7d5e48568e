package org.footwell.physics;

import java.util.List;
import org.footwell.calculation.Formula;
import org.footwell.calculation.Source;
import org.footwell.physics.FilterPrototype.Section;

/**
 * A low-pass or high-pass of analog form: gain, phase and group delay in closed form. A digital
 * filter made from it by the bilinear transform agrees well below half its sample rate.
 *
 * @param highPass whether it passes what lies above its corner
 * @param cornerHz the frequency its sections count from
 * @param sections their angular frequencies relative to the corner
 */
public record AnalogFilter(boolean highPass, double cornerHz, List<Section> sections) {

  public static final Source SECTION =
      Source.of("Group delay −dφ/dω of a second-order section, in closed form");

  /**
   * Group delay in ms of a first-order section of f0 Hz at f Hz. Low-pass and high-pass have the
   * same: they differ by a constant phase.
   */
  public static final Formula.Of2 FIRST_ORDER_DELAY =
      Formula.of("group_delay_ms", "1000/(2·π)·f0/(f0² + f²)", "ms", SECTION)
          .with("f0", "f", (f0, f) -> 1000 / (2 * Math.PI) * f0 / (f0 * f0 + f * f));

  /** Group delay in ms of a second-order section of f0 Hz and Q at f Hz, low-pass or high-pass. */
  public static final Formula.Of3 SECOND_ORDER_DELAY =
      Formula.of(
              "group_delay_ms",
              "1000/(2·π)·(f0/Q)·(f0² + f²)/((f0² − f²)² + (f·f0/Q)²)",
              "ms",
              SECTION)
          .with("f0", "Q", "f", AnalogFilter::secondOrderDelay);

  public AnalogFilter {
    sections = List.copyOf(sections);
  }

  /** Group delay in ms at a frequency in Hz, 0 or more. */
  public double groupDelayMs(double frequencyHz) {
    double sum = 0;
    for (Section section : sections) {
      double f0 = section.w0() * cornerHz;
      sum +=
          section.order() == 1
              ? FIRST_ORDER_DELAY.at(f0, frequencyHz)
              : SECOND_ORDER_DELAY.at(f0, section.q(), frequencyHz);
    }
    return sum;
  }

  /**
   * Phase in degrees at a frequency in Hz, above 0, unwrapped: from 0 down to −90 per order for the
   * low-pass, from 90 per order down to 0 for the high-pass.
   */
  public double phaseDeg(double frequencyHz) {
    double sum = 0;
    for (Section section : sections) {
      double x = frequencyHz / (section.w0() * cornerHz);
      double lag = section.order() == 1 ? Math.atan(x) : Math.atan2(x / section.q(), 1 - x * x);
      sum += (highPass ? section.order() * Math.PI / 2 : 0) - lag;
    }
    return Math.toDegrees(sum);
  }

  /** Complex gain at a frequency in Hz, 0 or more; 1 in the pass band, time factor e^(+jωt). */
  public Phasor at(double frequencyHz) {
    Phasor product = Phasor.ONE;
    for (Section section : sections) {
      double x = frequencyHz / (section.w0() * cornerHz);
      boolean first = section.order() == 1;
      Phasor denominator = first ? new Phasor(1, x) : new Phasor(1 - x * x, x / section.q());
      Phasor risen = first ? new Phasor(0, x) : new Phasor(-x * x, 0);
      product = product.times((highPass ? risen : Phasor.ONE).over(denominator));
    }
    return product;
  }

  /** Magnitude in dB at a frequency in Hz, above 0; 0 in the pass band. */
  public double magnitudeDb(double frequencyHz) {
    double sum = 0;
    for (Section section : sections) {
      double x = frequencyHz / cornerHz;
      // |HP| is |LP| times (ω/ω0)^order.
      double rise = highPass ? Decibels.ofAmplitude(x / section.w0()) * section.order() : 0;
      sum += Decibels.ofPower(section.power(x)) + rise;
    }
    return sum;
  }

  /** Squared magnitude at a frequency in Hz, above 0; 1 in the pass band. */
  public double squaredMagnitude(double frequencyHz) {
    double product = 1;
    double x = frequencyHz / cornerHz;
    for (Section section : sections) {
      double rise = x / section.w0();
      double square = rise * rise;
      product *= section.power(x);
      // |HP|² is |LP|² times (ω/ω0)^(2·order).
      if (highPass) {
        product *= section.order() == 1 ? square : square * square;
      }
    }
    return product;
  }

  private static double secondOrderDelay(double f0, double q, double f) {
    double difference = f0 * f0 - f * f;
    double damping = f * f0 / q;
    return 1000
        / (2 * Math.PI)
        * (f0 / q)
        * (f0 * f0 + f * f)
        / (difference * difference + damping * damping);
  }
}
