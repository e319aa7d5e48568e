package org.footwell.fitting.ring;

import java.math.RoundingMode;
import java.util.List;
import org.footwell.calculation.Refusing;
import org.footwell.calculation.text.Lengths;
import org.footwell.calculation.text.Measure;
import org.footwell.calculation.text.Phrase;
import org.footwell.fitting.ring.MountingHoles.HolePosition;
import org.footwell.fitting.ring.drawing.Millimetres;
import org.footwell.fitting.ring.drawing.Oval;

/** Sizes held against each other, and put into words. */
final class RingSizes {

  private RingSizes() {}

  /** Refuses what is not smaller on both axes. */
  static void inside(String at, Oval inner, RingWords what, Oval outer, Refusing to) {
    if (outer.beyond(inner) <= 0) {
      to.refuse(RingFault.NOT_INSIDE)
          .at(at)
          .given(spoken(inner))
          .with("outer", what)
          .allowed(Phrase.of(RingWords.LESS_THAN).own("size", spoken(outer, RoundingMode.FLOOR)));
    }
  }

  /** Refuses holes of a diameter that run into each other. */
  static void apart(String at, MountingHoles holes, double diameter, Refusing to) {
    List<HolePosition> centres = holes.centres();
    for (int i = 1; i < centres.size(); i++) {
      for (int j = 0; j < i; j++) {
        if (centres.get(i).distance(centres.get(j)) <= diameter) {
          to.refuse(RingFault.HOLES_COINCIDE)
              .at(at + holes.pointer(i))
              .given(spoken(centres.get(i)))
              .with("diameter", diameter)
              .allowed(Phrase.of(RingWords.APART));
          return;
        }
      }
    }
  }

  static Phrase moreThan(Oval size) {
    return Phrase.of(RingWords.MORE_THAN).own("size", spoken(size, RoundingMode.CEILING));
  }

  static Lengths spoken(HolePosition centre) {
    return new Lengths(
        List.of(Millimetres.text(centre.xMm()), Millimetres.text(centre.yMm())),
        Measure.MM,
        ", ",
        RoundingMode.HALF_UP);
  }

  static Lengths spoken(Oval oval) {
    return spoken(oval, RoundingMode.HALF_UP);
  }

  private static Lengths spoken(Oval oval, RoundingMode rounding) {
    String width = Millimetres.text(oval.widthMm());
    return new Lengths(
        oval.circular() ? List.of(width) : List.of(width, Millimetres.text(oval.heightMm())),
        Measure.MM,
        " × ",
        rounding);
  }
}
