package org.footwell.electrical.passive;

import static org.footwell.electrical.passive.PassiveFilterResult.Purpose.COMPENSATION;
import static org.footwell.electrical.passive.PassiveFilterResult.Purpose.HIGH_PASS;
import static org.footwell.electrical.passive.PassiveFilterResult.Purpose.LOW_PASS;
import static org.footwell.electrical.passive.PassiveFilterResult.Purpose.PAD;
import static org.footwell.parts.LadderElement.Place.SERIES;
import static org.footwell.parts.LadderElement.Place.SHUNT;

import java.util.ArrayList;
import java.util.List;
import org.footwell.calculation.Arithmetic;
import org.footwell.calculation.Formula;
import org.footwell.calculation.Source;
import org.footwell.electrical.passive.PassiveFilterResult.Part;
import org.footwell.electrical.passive.PassiveFilterResult.Purpose;
import org.footwell.loudspeaker.CoilImpedance;
import org.footwell.loudspeaker.Ladder;
import org.footwell.parts.Driver;
import org.footwell.parts.Filter;
import org.footwell.parts.LadderElement;
import org.footwell.parts.PreferredSeries;
import org.footwell.physics.Decibels;
import org.footwell.physics.Phasor;

/**
 * The parts a passive filter is made of, added from the amplifier to the driver, as calculated and as
 * they can be bought.
 */
final class FilterParts {

  /** Series resistor of a pad in ohm, from the load in ohm and the attenuation in dB. */
  static final Formula.Of2 PAD_SERIES =
      Formula.of("pad_series_ohm", "R·(1 − 10^(−A/20))", "ohm", Ladder.KIRCHHOFF)
          .with("R", "A", (r, a) -> r * (1 - Decibels.toAmplitude(-a)));

  /** Shunt resistor of a pad in ohm; with the load beside it the pad is the load again. */
  static final Formula.Of2 PAD_SHUNT =
      Formula.of("pad_shunt_ohm", "R/(10^(A/20) − 1)", "ohm", Ladder.KIRCHHOFF)
          .with("R", "A", (r, a) -> r / (Decibels.toAmplitude(a) - 1));

  /** Part of the power that heats the series resistor of a pad of A dB; a = 10^(−A/20). */
  static final Formula.Of1 PAD_SERIES_HEAT =
      Formula.of("pad_series_heat_share", "1 − 10^(−A/20)", "", Ladder.KIRCHHOFF)
          .with("A", a -> 1 - Decibels.toAmplitude(-a));

  /** Part of the power that heats the shunt resistor; the rest, a², is left for the load. */
  static final Formula.Of1 PAD_SHUNT_HEAT =
      Formula.of("pad_shunt_heat_share", "10^(−A/20)·(1 − 10^(−A/20))", "", Ladder.KIRCHHOFF)
          .with("A", a -> Decibels.toAmplitude(-a) * (1 - Decibels.toAmplitude(-a)));

  private static final Source DUAL =
      Source.of("Constant-resistance network: re + re²/Z in parallel with re + Z is re");

  /**
   * Resistor of the compensation in ohm: re and the real part of re²/Z, Z = Rc + jXc being the coil
   * at one frequency; re alone for an ideal coil.
   */
  static final Formula.Of3 COMPENSATION_OHM =
      Formula.of("compensation_ohm", "re + re²·Rc/(Rc² + Xc²)", "ohm", DUAL)
          .with("re", "Rc", "Xc", (re, rc, xc) -> re + re * re * rc / (rc * rc + xc * xc));

  /** Capacitor of the compensation in µF, from the same at f Hz; le/re² for an ideal coil. */
  static final Formula.Of4 COMPENSATION_UF =
      Formula.of("compensation_uf", "10⁶·(Rc² + Xc²)/(2·π·f·re²·Xc)", "µF", DUAL)
          .with(
              "re",
              "Rc",
              "Xc",
              "f",
              (re, rc, xc, f) -> 1e6 * (rc * rc + xc * xc) / (2 * Math.PI * f * re * re * xc));

  private final List<Purpose> purposes = new ArrayList<>();
  private final List<LadderElement> calculated = new ArrayList<>();
  private final List<Double> heatShares = new ArrayList<>();
  private final PreferredSeries series;
  private final double loadOhm;
  private final Double powerW;
  private final Arithmetic arithmetic;

  /**
   * None yet.
   *
   * @param series in which parts can be bought
   * @param powerW that goes in, or null where it is not known
   */
  FilterParts(PreferredSeries series, double loadOhm, Double powerW, Arithmetic arithmetic) {
    this.series = series;
    this.loadOhm = loadOhm;
    this.powerW = powerW;
    this.arithmetic = arithmetic;
  }

  void highPass(Filter filter) {
    LadderSynthesis.highPass(filter, loadOhm).forEach(e -> add(HIGH_PASS, e, null));
    explain(filter, LadderSynthesis.HIGH_PASS_UF, LadderSynthesis.HIGH_PASS_MH);
  }

  void lowPass(Filter filter) {
    LadderSynthesis.lowPass(filter, loadOhm).forEach(e -> add(LOW_PASS, e, null));
    explain(filter, LadderSynthesis.LOW_PASS_MH, LadderSynthesis.LOW_PASS_UF);
  }

  /** Every part of a side as a step: in the way and across by turns. */
  private void explain(Filter filter, Formula.Of3 inTheWay, Formula.Of3 across) {
    double[] g = LadderSynthesis.prototype(filter);
    for (int i = 0; i < g.length; i++) {
      arithmetic.apply(i % 2 == 0 ? inTheWay : across, g[i], loadOhm, filter.frequencyHz());
    }
  }

  void pad(double db) {
    double inTheWay = arithmetic.apply(PAD_SERIES, loadOhm, db);
    double across = arithmetic.apply(PAD_SHUNT, loadOhm, db);
    add(PAD, LadderElement.resistor(SERIES, inTheWay), arithmetic.apply(PAD_SERIES_HEAT, db));
    add(PAD, LadderElement.resistor(SHUNT, across), arithmetic.apply(PAD_SHUNT_HEAT, db));
  }

  /** The compensation of a driver's coil, exact at one frequency. */
  void compensation(Driver driver, double f) {
    Phasor coil = CoilImpedance.of(driver).at(f);
    double re = driver.reOhm();
    double ohm = arithmetic.apply(COMPENSATION_OHM, re, coil.re(), coil.im());
    double uf = arithmetic.apply(COMPENSATION_UF, re, coil.re(), coil.im(), f);
    add(COMPENSATION, new LadderElement(SHUNT, uf, null, null, ohm, null), null);
  }

  private void add(Purpose purpose, LadderElement element, Double heatShare) {
    purposes.add(purpose);
    heatShares.add(heatShare);
    calculated.add(element);
  }

  /** The ladder of the calculated values, without the compensation: for the resistor. */
  List<LadderElement> calculatedForResistor() {
    return forResistor(calculated);
  }

  /** The ladder of the preferred values, without the compensation: for the resistor. */
  List<LadderElement> preferredForResistor() {
    return forResistor(preferred());
  }

  private List<LadderElement> forResistor(List<LadderElement> all) {
    List<LadderElement> kept = new ArrayList<>();
    for (int i = 0; i < all.size(); i++) {
      if (purposes.get(i) != COMPENSATION) {
        kept.add(all.get(i));
      }
    }
    return kept;
  }

  /** The ladder of the preferred values. */
  List<LadderElement> preferred() {
    return calculated.stream().map(this::rounded).toList();
  }

  private LadderElement rounded(LadderElement e) {
    return new LadderElement(
        e.place(),
        nearest(e.capacitanceUf()),
        nearest(e.inductanceMh()),
        null,
        nearest(e.resistanceOhm()),
        null);
  }

  private Double nearest(Double value) {
    return value == null ? null : (Double) series.nearest(value);
  }

  /** One by one, as they are bought. */
  List<Part> list() {
    List<Part> parts = new ArrayList<>();
    for (int i = 0; i < calculated.size(); i++) {
      LadderElement e = calculated.get(i);
      if (e.resistanceOhm() != null) {
        parts.add(part(i, null, null, e.resistanceOhm()));
      }
      if (e.inductanceMh() != null) {
        parts.add(part(i, null, e.inductanceMh(), null));
      }
      if (e.capacitanceUf() != null) {
        parts.add(part(i, e.capacitanceUf(), null, null));
      }
    }
    return parts;
  }

  private Part part(int i, Double uf, Double mh, Double ohm) {
    double value = uf != null ? uf : mh != null ? mh : ohm;
    Double share = heatShares.get(i);
    return PassiveFilterResultPartBuilder.builder()
        .purpose(purposes.get(i))
        .place(calculated.get(i).place())
        .capacitanceUf(uf)
        .inductanceMh(mh)
        .resistanceOhm(ohm)
        .nearestUf(nearest(uf))
        .nearestMh(nearest(mh))
        .nearestOhm(nearest(ohm))
        .offPercent(100 * (series.nearest(value) / value - 1))
        .heatShare(share)
        .heatW(share == null || powerW == null ? null : (Double) (share * powerW))
        .build();
  }
}
