package org.footwell.signal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

class SectionProperties {

  @Property
  void everySectionIsStableAndScalesWithTheRate(
      @ForAll SectionKind kind,
      @ForAll @DoubleRange(min = 1, max = 3900) double frequency,
      @ForAll @DoubleRange(min = 0.1, max = 100) double q,
      @ForAll @DoubleRange(min = -30, max = 30) double gain) {
    Biquad section = kind.design(frequency, q, gain, 8000);
    assertTrue(section.stable());
    assertTrue(section.poleRadius() < 1);
    // All that counts is the frequency over the rate.
    Biquad doubled = kind.design(2 * frequency, q, gain, 16000);
    assertEquals(section.a1(), doubled.a1(), 1e-12);
    assertEquals(section.b2(), doubled.b2(), 1e-9);
  }

  @Property
  void aPowerIsTheSquareOfTheGain(
      @ForAll SectionKind kind,
      @ForAll @DoubleRange(min = 1, max = 20000) double frequency,
      @ForAll @DoubleRange(min = 1, max = 23900) double at) {
    Biquad section = kind.design(frequency, 2, 6, 48000);
    CirclePoint p = CirclePoint.of(at, 48000);
    double modulus = section.at(p).gain().modulus();
    assertEquals(modulus * modulus, section.power(p), 1e-9 * (1 + section.power(p)));
  }
}
