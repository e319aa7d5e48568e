package org.footwell.fitting.ring;

import java.util.List;
import org.footwell.calculation.CoreFault;
import org.footwell.calculation.Remark;
import org.footwell.calculation.Run;
import org.footwell.calculation.text.Allowed;
import org.footwell.calculation.text.Phrase;
import org.footwell.fitting.ring.AdapterRingRequest.FittedDriver;
import org.footwell.fitting.ring.AdapterRingRequest.Opening;
import org.footwell.fitting.ring.AdapterRingRequest.RingMaking;
import org.footwell.fitting.ring.MountingHoles.HolePosition;
import org.footwell.fitting.ring.drawing.Millimetres;
import org.footwell.fitting.ring.drawing.Oval;

/** Refuses measures that cannot be those of one opening, driver or ring. */
final class MeasureCheck {

  private final AdapterRingRequest q;
  private final Run run;

  private MeasureCheck(AdapterRingRequest q, Run run) {
    this.q = q;
    this.run = run;
  }

  static void refuseImpossible(AdapterRingRequest q, Run run) {
    MeasureCheck check = new MeasureCheck(q, run);
    check.material(q.ring());
    check.opening(q.opening());
    check.driver(q.driver());
    check.ring(q.ring());
    run.requireNoFaults();
  }

  private void material(RingMaking ring) {
    if (ring.densityKgPerM3() == null) {
      run.refuse(CoreFault.REQUIRED).at("/ring/density_kg_per_m3");
    }
    if (ring.material() == RingMaterial.OTHER && ring.softeningC() == null) {
      run.refuse(CoreFault.REQUIRED).at("/ring/softening_c");
    }
  }

  private void opening(Opening opening) {
    Oval cutOut = opening.cutOut().oval();
    if (opening.limit() != null) {
      inside("/opening/cut_out", cutOut, RingWords.PANEL_LIMIT, opening.limit().oval());
    }
    List<HolePosition> centres = opening.holes().centres();
    for (int i = 0; i < centres.size(); i++) {
      if (cutOut.inside(centres.get(i).xMm(), centres.get(i).yMm()) >= 0) {
        run.refuse(RingFault.FACTORY_HOLE_IN_CUT_OUT)
            .at("/opening/holes" + opening.holes().pointer(i))
            .given(spoken(centres.get(i)))
            .allowed(Phrase.of(RingWords.OUTSIDE_CUT_OUT));
        if (opening.holes().boltCircle() != null) {
          break;
        }
      }
    }
    apart("/opening/holes", opening.holes(), q.ring().factoryHoleMm());
  }

  private void driver(FittedDriver driver) {
    Oval frame = driver.frame().oval();
    Oval cutOut = driver.cutOut().oval();
    inside("/driver/cut_out", cutOut, RingWords.FRAME, frame);
    inside("/driver/magnet_diameter_mm", driver.magnetDiameterMm(), cutOut);
    inside("/driver/basket_diameter_mm", driver.basketDiameterMm(), cutOut);
    onFrame(driver.holes(), frame, cutOut);
    apart("/driver/holes", driver.holes(), q.ring().pilotMm());
    boolean round = frame.circular() && cutOut.circular();
    if (driver.turnedDeg() != null && !round && driver.turnedDeg() % 180 != 0) {
      run.refuse(CoreFault.NOT_ALLOWED)
          .at("/driver/turned_deg")
          .given(driver.turnedDeg())
          .allowed(Phrase.of(RingWords.OVAL_TURN));
    }
  }

  /** The frame is a circle or an ellipse: one with ears or corners is taken as that around them. */
  private void onFrame(MountingHoles holes, Oval frame, Oval cutOut) {
    List<HolePosition> centres = holes.centres();
    for (int i = 0; i < centres.size(); i++) {
      HolePosition centre = centres.get(i);
      double inCutOut = cutOut.inside(centre.xMm(), centre.yMm());
      double inFrame = frame.inside(centre.xMm(), centre.yMm());
      if (inCutOut < 0 && inFrame > 0) {
        continue;
      }
      Remark remark =
          inCutOut >= 0
              ? run.refuse(RingFault.HOLE_IN_DRIVER_CUT_OUT)
                  .with("by", inCutOut)
                  .own("cutOut", spoken(cutOut))
                  .allowed(Phrase.of(RingWords.ON_THE_FRAME))
              : run.refuse(RingFault.HOLE_OUTSIDE_FRAME)
                  .with("by", -inFrame)
                  .own("frame", spoken(frame))
                  .allowed(moreThan(frame.scaled(farthest(centres, frame))));
      remark.at("/driver/holes" + holes.pointer(i)).given(spoken(centre));
      if (holes.boltCircle() != null) {
        return;
      }
    }
  }

  /** How much larger a frame of the same shape would be whose edge runs through the farthest hole. */
  private static double farthest(List<HolePosition> centres, Oval frame) {
    return centres.stream()
        .mapToDouble(centre -> frame.timesThrough(centre.xMm(), centre.yMm()))
        .max()
        .orElseThrow();
  }

  private void ring(RingMaking ring) {
    if (ring.pilotMm() >= ring.screwMm()) {
      run.refuse(CoreFault.NOT_ALLOWED)
          .at("/ring/pilot_mm")
          .given(ring.pilotMm())
          .allowed(Allowed.below(ring.screwMm(), "mm"));
    }
    Oval inner = AdapterRing.inner(q);
    if (ring.outer() != null && ring.outer().oval().beyond(inner) <= 0) {
      run.refuse(RingFault.OUTER_WITHIN_INNER)
          .at("/ring/outer")
          .given(spoken(ring.outer().oval()))
          .allowed(moreThan(inner));
    }
  }

  /** A driver goes in through its own cut-out, which magnet and basket may just fill. */
  private void inside(String at, Double diameter, Oval cutOut) {
    if (diameter != null && cutOut.beyond(Oval.round(diameter)) < 0) {
      run.refuse(RingFault.NOT_INSIDE)
          .at(at)
          .given(Millimetres.text(diameter) + " mm")
          .with("outer", RingWords.DRIVER_CUT_OUT)
          .allowed(Allowed.atMost(Math.min(cutOut.widthMm(), cutOut.heightMm()), "mm"));
    }
  }

  private void inside(String at, Oval inner, RingWords what, Oval outer) {
    if (outer.beyond(inner) <= 0) {
      run.refuse(RingFault.NOT_INSIDE)
          .at(at)
          .given(spoken(inner))
          .with("outer", what)
          .allowed(Phrase.of(RingWords.LESS_THAN).own("size", spoken(outer)));
    }
  }

  private void apart(String at, MountingHoles holes, double diameter) {
    List<HolePosition> centres = holes.centres();
    for (int i = 1; i < centres.size(); i++) {
      for (int j = 0; j < i; j++) {
        if (centres.get(i).distance(centres.get(j)) <= diameter) {
          run.refuse(RingFault.HOLES_COINCIDE)
              .at(at + holes.pointer(i))
              .given(spoken(centres.get(i)))
              .with("diameter", diameter)
              .allowed(Phrase.of(RingWords.APART));
          return;
        }
      }
    }
  }

  private static Phrase moreThan(Oval size) {
    return Phrase.of(RingWords.MORE_THAN).own("size", spoken(size));
  }

  private static String spoken(HolePosition centre) {
    return Millimetres.text(centre.xMm()) + ", " + Millimetres.text(centre.yMm()) + " mm";
  }

  private static String spoken(Oval oval) {
    return oval.circular()
        ? Millimetres.text(oval.widthMm()) + " mm"
        : Millimetres.text(oval.widthMm()) + " × " + Millimetres.text(oval.heightMm()) + " mm";
  }
}
