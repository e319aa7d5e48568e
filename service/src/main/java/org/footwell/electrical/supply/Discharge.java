package org.footwell.electrical.supply;

import static org.footwell.calculation.Source.COMMON_PRACTICE;
import static org.footwell.calculation.Source.DEFINITION;

import org.footwell.calculation.Arithmetic;
import org.footwell.calculation.Formula;
import org.footwell.calculation.Source;

/** How long a battery lasts. */
final class Discharge {

  static final Source PEUKERT =
      Source.of(
          "Peukert, W., Über die Abhängigkeit der Kapazität von der Entladestromstärke bei"
              + " Bleiakkumulatoren, Elektrotechnische Zeitschrift 20 (1897)");
  static final Source RESERVE =
      Source.of(
          "Reserve capacity of starter batteries: minutes of 25 A at 27 °C to 10.5 V (SAE J537,"
              + " as commonly quoted); exponent by Peukert's law from it and the 20 h rate");

  /** Hours and current of the reserve capacity and of the rated one. */
  private static final double RATED_H = 20;

  private static final double RESERVE_A = 25;

  /** Peukert's exponent from the capacity in Ah at 20 h, below 500, and the reserve in min. */
  static final Formula.Of2 EXPONENT =
      Formula.of("peukert_exponent", "ln(20/(t/60))/ln(25/(C/20))", "", RESERVE)
          .with(
              "C",
              "t",
              (c, t) -> Math.log(RATED_H / (t / 60)) / Math.log(RESERVE_A / (c / RATED_H)));

  /**
   * Hours a full battery of C Ah gives I amperes, exponent k. Below the 20 h rate C/I: the law would
   * give more than the rated capacity, which is not counted on.
   */
  static final Formula.Of3 HOURS =
      Formula.of("full_discharge_h", "20·(C/(20·I))^k, below the 20 h rate C/I", "h", PEUKERT)
          .with(
              "C",
              "I",
              "k",
              (c, i, k) -> {
                double hours = c / i;
                return hours >= RATED_H ? hours : RATED_H * Math.pow(hours / RATED_H, k);
              });

  /** Minutes until a share s of h hours is used. */
  static final Formula.Of2 MINUTES =
      Formula.of("listening_min", "60·h·s", "min", DEFINITION)
          .with("h", "s", (hours, share) -> 60 * hours * share);

  /** Current in A that self-discharge of a share s in 30 days amounts to. */
  static final Formula.Of2 SELF_DISCHARGE =
      Formula.of("self_discharge_a", "C·s/(30·24 h)", "A", COMMON_PRACTICE)
          .with("C", "s", (c, share) -> c * share / (30 * 24));

  /** Days until a share s of C Ah is drained by I amperes in all. */
  static final Formula.Of3 DAYS =
      Formula.of("standby_days", "C·s/(24 h·I)", "days", DEFINITION)
          .with("C", "s", "I", (c, share, i) -> c * share / (24 * i));

  private Discharge() {}

  /** Whether the current is above the one the capacity is rated at. */
  static boolean fasterThanRated(double capacityAh, double current) {
    return current > capacityAh / RATED_H;
  }

  /**
   * Days until the engine no longer starts, or null when nothing drains.
   *
   * @param spare share of the capacity beyond what starting takes
   * @param selfDischarge share of the capacity in 30 days
   */
  static Double standbyDays(
      double capacityAh,
      double spare,
      double selfDischarge,
      double standbyA,
      Arithmetic arithmetic) {
    double self = arithmetic.apply(SELF_DISCHARGE, capacityAh, selfDischarge);
    double drain = standbyA + self;
    return drain == 0 ? null : (Double) arithmetic.apply(DAYS, capacityAh, spare, drain);
  }

  /** Peukert's exponent from the reserve; NaN where 25 A are no more than the rated current. */
  static double exponent(double capacityAh, double reserveMin, Arithmetic arithmetic) {
    return capacityAh < RATED_H * RESERVE_A
        ? arithmetic.apply(EXPONENT, capacityAh, reserveMin)
        : Double.NaN;
  }
}
