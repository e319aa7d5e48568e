package org.footwell.signal;

import java.util.List;
import org.footwell.physics.Phasor;

/** Sections in a row. */
public final class Cascade {

  private final Biquad[] sections;
  private final Quadratic[] numerators;
  private final Quadratic[] denominators;

  private Cascade(Biquad[] sections) {
    this.sections = sections;
    numerators = new Quadratic[sections.length];
    denominators = new Quadratic[sections.length];
    for (int i = 0; i < sections.length; i++) {
      numerators[i] = sections[i].numerator();
      denominators[i] = sections[i].denominator();
    }
  }

  public static Cascade of(List<Biquad> sections) {
    return new Cascade(sections.toArray(new Biquad[0]));
  }

  static Cascade of(Biquad section) {
    return new Cascade(new Biquad[] {section});
  }

  public List<Biquad> sections() {
    return List.of(sections);
  }

  /** Whether every section is stable. */
  public boolean stable() {
    for (Biquad section : sections) {
      if (!section.stable()) {
        return false;
      }
    }
    return true;
  }

  /** Squared magnitude at a frequency. */
  public double power(CirclePoint p) {
    double power = 1;
    for (int i = 0; i < sections.length; i++) {
      power *= numerators[i].power(p) / denominators[i].power(p);
    }
    return power;
  }

  /** Gain, group delay and slope at a frequency. */
  public Response at(CirclePoint p) {
    double re = 1;
    double im = 0;
    double delay = 0;
    double slope = 0;
    for (int i = 0; i < sections.length; i++) {
      Quadratic n = numerators[i];
      Quadratic d = denominators[i];
      double nr = n.real(p);
      double ni = n.imaginary(p);
      double dr = d.real(p);
      double di = d.imaginary(p);
      double above = nr * nr + ni * ni;
      double below = dr * dr + di * di;
      // A zero of the numerator right here turns the phase at once: no delay and no slope of it.
      boolean zero = above == 0;
      // One division for both, since it takes longer than all the rest.
      double either = 1 / (zero ? below : above * below);
      double perBelow = zero ? either : either * above;
      double perAbove = zero ? 0 : either * below;
      double hr = (nr * dr + ni * di) * perBelow;
      double hi = (ni * dr - nr * di) * perBelow;
      double before = re;
      re = before * hr - im * hi;
      im = before * hi + im * hr;
      delay += n.delayTimesPower(p) * perAbove - d.delayTimesPower(p) * perBelow;
      slope += n.slopeTimesPower(p, nr) * perAbove - d.slopeTimesPower(p, dr) * perBelow;
    }
    return new Response(new Phasor(re, im), delay, slope);
  }
}
