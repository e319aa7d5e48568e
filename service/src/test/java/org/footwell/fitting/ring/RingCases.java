package org.footwell.fitting.ring;

import java.util.LinkedHashMap;
import java.util.Map;
import org.footwell.fitting.ring.drawing.DrawnRing;

/** Rings that other programs have read; see the table ring-readers. */
final class RingCases {

  private RingCases() {}

  /** As they are answered. */
  static Map<String, AdapterRingResult> results() {
    Map<String, AdapterRingResult> results = new LinkedHashMap<>();
    drafts().forEach((name, draft) -> results.put(name, draft.result()));
    return results;
  }

  /** As they are drawn. */
  static Map<String, DrawnRing> all() {
    Map<String, DrawnRing> rings = new LinkedHashMap<>();
    drafts().forEach((name, draft) -> rings.put(name, draft.drawn()));
    return rings;
  }

  private static Map<String, RingDraft> drafts() {
    Map<String, RingDraft> drafts = new LinkedHashMap<>();
    drafts.put("round", new RingDraft());
    drafts.put("oval-opening", new RingDraft().ovalOpening());

    RingDraft oval = new RingDraft().ovalOpening();
    oval.driver
        .frame(RingDraft.oval(164, 236))
        .cutOut(RingDraft.oval(146, 218))
        .holes(RingDraft.corners(110, 160));
    oval.opening.holes(RingDraft.corners(140, 130));
    oval.ring.arcToleranceMm(0.01);
    drafts.put("oval-driver", oval);

    RingDraft coarse = new RingDraft();
    coarse.ring.arcToleranceMm(1.0);
    drafts.put("coarse", coarse);

    RingDraft broken = new RingDraft();
    broken.ring.outer(RingDraft.round(173));
    broken.driver.turnedDeg(45.0);
    drafts.put("holes-break-edge", broken);
    return drafts;
  }
}
