package org.footwell.acoustic.driver;

import java.util.List;
import org.footwell.acoustic.driver.Culprit.QPair;
import org.footwell.acoustic.driver.Culprit.Suspect;
import org.footwell.acoustic.driver.sheet.Agreement;
import org.footwell.acoustic.driver.sheet.DriverTolerance;
import org.footwell.acoustic.driver.sheet.Figure;
import org.footwell.acoustic.driver.sheet.Identity;
import org.footwell.acoustic.driver.sheet.Path;
import org.footwell.acoustic.driver.sheet.Reconciliation;
import org.footwell.acoustic.driver.sheet.Sheet;
import org.footwell.calculation.Remark;
import org.footwell.calculation.Run;
import org.footwell.calculation.text.Phrase;

/** What is said about the figures that the identities tie together. */
final class SheetRemarks {

  /** A derived figure that rounding leaves this uncertain is said to be so, as a ratio. */
  private static final double POOR = 0.15;

  private final Sheet sheet;
  private final Agreement agreement;
  private final Reconciliation reconciliation;
  private final Culprit culprit;
  private final Run run;
  private final boolean small;
  private Suspect odd;
  private List<Figure> suspects = List.of();

  SheetRemarks(
      Sheet sheet,
      Agreement agreement,
      Reconciliation reconciliation,
      DriverTolerance tolerance,
      Double nominalMm,
      Run run) {
    this.sheet = sheet;
    this.agreement = agreement;
    this.reconciliation = reconciliation;
    this.culprit = new Culprit(sheet, tolerance, nominalMm);
    this.run = run;
    this.small = UsualRange.isSmall(sheet, nominalMm);
  }

  /** The figure that stands out, or null. */
  Suspect odd() {
    return odd;
  }

  /** Figures that may be wrong; none when nothing disagrees or more than one is wrong. */
  List<Figure> suspects() {
    return suspects;
  }

  boolean small() {
    return small;
  }

  /** A cause that explains it all stands before what it causes. */
  void remark() {
    boolean explained = toldExchange() || toldSlip();
    for (Figure figure : Figure.ALL) {
      if (sheet.isGiven(figure)) {
        OtherRemarks.outside(figure.pointer(), sheet.of(figure), UsualRange.of(figure), small, run);
      }
    }
    if (agreement.isAnyOff()) {
      disagreements();
    }
    if (!explained) {
      derived();
      if (agreement.isAnyOff()) {
        blame(culprit.suspects());
      }
    }
  }

  private boolean toldExchange() {
    if (!agreement.isAnyOff() || !culprit.areQesAndQmsExchanged(agreement)) {
      return false;
    }
    run.find(DriverFinding.QES_AND_QMS_EXCHANGED)
        .at(Figure.QES.pointer())
        .value(sheet.of(Figure.QES))
        .limit(sheet.of(Figure.QMS));
    odd = new Suspect(Figure.QES, sheet.of(Figure.QMS), true);
    suspects = List.of(Figure.QES, Figure.QMS);
    return true;
  }

  private boolean toldSlip() {
    Culprit.Slip slip = isStrange() || agreement.isAnyGross() ? culprit.slip() : null;
    if (slip == null) {
      return false;
    }
    run.find(DriverFinding.UNIT_SLIP)
        .at(slip.figure().pointer())
        .value(sheet.of(slip.figure()))
        .limit(slip.right())
        .with("slip", slip.slip().words())
        .with("right", Phrase.of(DriverWords.NUMBER).with("number", slip.right()));
    odd = new Suspect(slip.figure(), slip.right(), true);
    suspects = List.of(slip.figure());
    return true;
  }

  /** Whether a figure, given or derived, is so far from the usual that a unit may be wrong. */
  private boolean isStrange() {
    for (Figure figure : Figure.ALL) {
      if (figure != Figure.SENSITIVITY
          && sheet.isKnown(figure)
          && UsualRange.of(figure).isSuspicious(sheet.of(figure), small)) {
        return true;
      }
    }
    return Culprit.hasOddMass(sheet);
  }

  private void disagreements() {
    if (sheet.hasImpossibleTotalQ()) {
      boolean mechanical =
          sheet.isGiven(Figure.QMS) && sheet.of(Figure.QTS) >= sheet.of(Figure.QMS);
      run.find(DriverFinding.QTS_IMPOSSIBLE)
          .at(pointer(Figure.QTS))
          .value(sheet.of(Figure.QTS))
          .limit(sheet.of(mechanical ? Figure.QMS : Figure.QES))
          .field("other", mechanical ? "qms" : "qes");
    }
    for (Identity identity : Identity.ALL) {
      if (agreement.isOff(identity)) {
        run.find(DriverFinding.about(identity, agreement.isGross(identity)))
            .at(pointer(identity.figure))
            .value(sheet.of(identity.figure))
            .limit(agreement.expected(identity))
            .with("off", Math.abs(agreement.excess(identity)))
            .with("allowed", agreement.allowed(identity))
            .with("through", through(identity));
      }
    }
    if (agreement.isOff(Identity.SENSITIVITY)
        && Math.abs(agreement.otherBasisExcess()) < agreement.allowed(Identity.SENSITIVITY) / 2) {
      run.find(DriverFinding.SENSITIVITY_FITS_OTHER_BASIS)
          .at("/sensitivity/basis")
          .value(sheet.of(Figure.SENSITIVITY))
          .limit(sheet.of(Figure.SENSITIVITY) - agreement.otherBasisExcess())
          .with(
              "other", sheet.drive.isPerVolt() ? DriverWords.FOR_ONE_WATT : DriverWords.AT_2_83_V);
    }
  }

  /** How figures that were not given came in. */
  private Phrase through(Identity identity) {
    List<Phrase> paths = sheet.pathsInto(identity).stream().map(SheetRemarks::path).toList();
    return paths.isEmpty() ? Phrase.nothing() : Phrase.of(DriverWords.THROUGH).with("paths", paths);
  }

  private static Phrase path(Path path) {
    return Phrase.of(DriverWords.PATH)
        .field("figure", path.target.field)
        .field("inputs", path.inputs());
  }

  /** A figure that was derived has no place in the request. */
  private String pointer(Figure figure) {
    return sheet.isGiven(figure) ? figure.pointer() : "";
  }

  private void blame(List<Suspect> all) {
    QPair pair = culprit.pair();
    Suspect single = all.isEmpty() ? null : culprit.odd(all, reconciliation);
    if (pair != null && (all.isEmpty() || (pair.unusual() && !isUnusualBesides(single)))) {
      blame(pair);
      return;
    }
    if (all.isEmpty()) {
      run.find(DriverFinding.SEVERAL_FIGURES_WRONG)
          .at("")
          .fields(
              "farthest", reconciliation.farthest().stream().map(figure -> figure.field).toList());
      return;
    }
    suspects = all.stream().map(Suspect::figure).toList();
    odd = single;
    if (single == null) {
      run.find(DriverFinding.ONE_OF_SEVERAL_WRONG).at("").with("names", described(all));
      return;
    }
    Remark remark =
        run.find(DriverFinding.ODD_ONE_OUT)
            .at(single.figure().pointer())
            .value(sheet.of(single.figure()))
            .with("or", pair == null || isOfPair(single) ? Phrase.nothing() : or(pair))
            .with("implies", implies(single));
    if (single.isImplied()) {
      remark.limit(single.implied());
    }
  }

  private static Phrase implies(Suspect suspect) {
    return suspect.isImplied()
        ? Phrase.of(DriverWords.GIVES).with("value", suspect.implied())
        : Phrase.nothing();
  }

  private static Phrase or(QPair pair) {
    return Phrase.of(DriverWords.OR_BOTH_Q)
        .with("qes", pair.impliedQes())
        .with("qts", pair.impliedQts());
  }

  private static boolean isOfPair(Suspect suspect) {
    return suspect.figure() == Figure.QES || suspect.figure() == Figure.QTS;
  }

  /** Whether another figure than qes and qts is not usual as given. */
  private static boolean isUnusualBesides(Suspect suspect) {
    return suspect != null && suspect.unusual() && !isOfPair(suspect);
  }

  private void blame(QPair pair) {
    suspects = List.of(Figure.QES, Figure.QTS);
    odd = new Suspect(Figure.QES, pair.impliedQes(), pair.unusual());
    run.find(DriverFinding.QES_AND_QTS_WRONG)
        .at(Figure.QES.pointer())
        .value(sheet.of(Figure.QES))
        .limit(pair.impliedQes())
        .with("qts", pair.impliedQts());
  }

  private List<Phrase> described(List<Suspect> all) {
    return all.stream().map(this::described).toList();
  }

  private Phrase described(Suspect suspect) {
    Phrase words =
        Phrase.of(suspect.isImplied() ? DriverWords.SUSPECT_WOULD_BE : DriverWords.SUSPECT)
            .field("figure", suspect.figure().field)
            .with("value", sheet.of(suspect.figure()));
    return suspect.isImplied() ? words.with("implied", suspect.implied()) : words;
  }

  /** What is strange about derived figures; the first strange one stands for those after it. */
  private void derived() {
    boolean told = false;
    for (Figure figure : Figure.ALL) {
      if (sheet.isKnown(figure) && !sheet.isGiven(figure)) {
        double value = sheet.of(figure);
        UsualRange range = UsualRange.of(figure);
        if (range.isSuspicious(value, small) && !told) {
          told = true;
          run.find(DriverFinding.DERIVED_IMPLAUSIBLE)
              .at("")
              .value(value)
              .field("name", figure.field)
              .with("low", range.low(small))
              .with("high", range.high(small));
        } else if (sheet.rounding(figure) > POOR) {
          run.find(DriverFinding.POORLY_DETERMINED)
              .at("")
              .value(100 * sheet.rounding(figure))
              .field("name", figure.field);
        }
      }
    }
    if (!told && Culprit.hasOddMass(sheet)) {
      double mass = sheet.of(Figure.MMS_G);
      double area = sheet.of(Figure.SD_CM2);
      run.find(DriverFinding.MASS_UNUSUAL_FOR_AREA)
          .at(pointer(Figure.MMS_G))
          .value(mass / area)
          .with("mass", mass)
          .with("area", area)
          .with("low", UsualRange.LEAST_MASS_PER_AREA)
          .with("high", UsualRange.MOST_MASS_PER_AREA);
    }
  }
}
