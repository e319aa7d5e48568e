package org.footwell.vehicle.packages;

import java.util.List;
import org.footwell.calculation.Run;
import org.footwell.calculation.text.Phrase;
import org.footwell.vehicle.packages.PackageOptionsResult.Relaxed;

/** What is to be said of the packages as a whole. */
final class PackageRemarks {

  private final PackageOptionsRequest q;
  private final Run run;

  PackageRemarks(PackageOptionsRequest q, Run run) {
    this.q = q;
    this.run = run;
  }

  void remark(Search search, Screening screening, List<FoundPackage> front, PackageList list) {
    if (search.cutShort() || search.overfull() || screening.cutShort()) {
      run.find(PackageFinding.SEARCH_CUT_SHORT).at("/offer").with("count", front.size());
    }
    if (list.stopped() > 0) {
      run.find(PackageFinding.REVIEW_STOPS_SOME).at("/plan").with("count", list.stopped());
    }
    long below = list.listed().stream().filter(one -> !one.levelReached()).count();
    if (below > 0) {
      run.find(PackageFinding.LEVEL_BELOW_WISH)
          .at("/wishes/level_db_spl")
          .limit(q.wishes().levelDbSpl())
          .with("count", below);
    }
    if (list.listed().size() + list.stopped() < front.size()) {
      run.find(PackageFinding.NOT_ALL_LISTED)
          .at("/list_count")
          .value(list.listed().size())
          .limit(front.size());
    }
  }

  /** Whether there is a slot that nothing fits; says which. */
  boolean nothingFits(SlotLayout layout, List<Fillings> fillings) {
    boolean none = false;
    for (SlotLayout.Slot slot : layout.slots()) {
      if (fillings.get(slot.index()).all().isEmpty()) {
        none = true;
        run.find(PackageFinding.NOTHING_FITS)
            .at("/slots/" + slot.index())
            .own("slot", slot.given().name())
            .with("why", slot.alike() ? OfferWords.MAY_NOT_STAY : OfferWords.PARTS_UNLIKE);
      }
    }
    return none;
  }

  /** No combination of outputs bears what fits. */
  void noOutputSuits() {
    run.find(PackageFinding.NO_OUTPUT_SUITS).at("/offer/amplifiers");
  }

  void excluding(List<Relaxed> relaxed) {
    for (Relaxed one : relaxed) {
      if (one.wishes().size() == 1) {
        run.find(PackageFinding.WISH_OUT_OF_REACH)
            .at(at(one.wishes().get(0)))
            .value(one.attainable().get(0))
            .limit(wanted(one.wishes().get(0)))
            .with("wish", one.wishes().get(0))
            .with("wanted", AimFigure.of(one.wishes().get(0), wanted(one.wishes().get(0))))
            .with("closest", AimFigure.of(one.wishes().get(0), one.attainable().get(0)));
      } else {
        run.find(PackageFinding.WISHES_EXCLUDE_EACH_OTHER)
            .at(one.wishes().stream().map(PackageRemarks::at).toList())
            .with("wishes", one.wishes().stream().map(Phrase::of).toList());
      }
    }
  }

  private double wanted(Aim aim) {
    return switch (aim) {
      case PRICE -> q.wishes().budget().doubleValue();
      case MASS -> q.wishes().massChangeG();
      case REACH -> q.wishes().lowestHz();
      case LEVEL -> q.wishes().levelDbSpl();
    };
  }

  private static String at(Aim aim) {
    return "/wishes/"
        + switch (aim) {
          case PRICE -> "budget";
          case MASS -> "mass_change_g";
          case REACH -> "lowest_hz";
          case LEVEL -> "level_db_spl";
        };
  }
}
