package org.footwell.electrical.passive;

import static org.footwell.electrical.passive.NetworkFault.DRIVER_MISSING;
import static org.footwell.electrical.passive.NetworkFault.NOTHING_TO_COMPENSATE;
import static org.footwell.electrical.passive.NetworkFault.NOTHING_TO_DESIGN;
import static org.footwell.electrical.passive.NetworkFault.ORDER_NOT_LINKWITZ_RILEY;
import static org.footwell.electrical.passive.NetworkFault.ORDER_NOT_PASSIVE;
import static org.footwell.electrical.passive.NetworkFault.PART_OUT_OF_REACH;
import static org.footwell.electrical.passive.NetworkFinding.BAND_SIDES_INTERACT;
import static org.footwell.electrical.passive.NetworkFinding.DRIVER_SHIFTS_RESPONSE;
import static org.footwell.electrical.passive.NetworkFinding.FILTER_LOAD_LOW;
import static org.footwell.electrical.passive.NetworkFinding.INVERT_ONE_WAY;
import static org.footwell.electrical.passive.NetworkFinding.LOAD_UNLIKE_DRIVER;
import static org.footwell.electrical.passive.NetworkFinding.NETWORK_LOAD_BELOW_RATED;
import static org.footwell.electrical.passive.NetworkFinding.NETWORK_LOAD_TOO_LOW;
import static org.footwell.electrical.passive.NetworkFinding.PAD_GETS_HOT;
import static org.footwell.electrical.passive.NetworkFinding.ROUNDING_SHIFTS_RESPONSE;
import static org.footwell.parts.FrequencyFault.RANGE_WITHOUT_POINTS;

import java.util.List;
import java.util.Objects;
import org.footwell.calculation.Arithmetic;
import org.footwell.calculation.Calculation;
import org.footwell.calculation.Card;
import org.footwell.calculation.Run;
import org.footwell.calculation.Source;
import org.footwell.electrical.amplifier.AmplifierFinding;
import org.footwell.electrical.impedance.Extremes;
import org.footwell.electrical.impedance.Extremes.Place;
import org.footwell.electrical.impedance.MountedDriver;
import org.footwell.electrical.passive.FilterCurves.Deviations;
import org.footwell.electrical.passive.PassiveFilterResult.Part;
import org.footwell.loudspeaker.Ladder;
import org.footwell.parts.CurveFrequencies;
import org.footwell.parts.Driver;
import org.footwell.parts.Filter;
import org.footwell.parts.Filter.Kind;
import org.footwell.parts.PreferredSeries;
import org.footwell.parts.Safety;
import org.footwell.physics.FilterPrototype;
import org.footwell.physics.ThieleSmall;

/** Values of a passive filter, and what becomes of them with parts that can be bought. */
public final class PassiveFilter implements Calculation<PassiveFilterRequest, PassiveFilterResult> {

  // From here on a remark is made, dB; common practice.
  private static final double INTERACTION_DB = 1;
  private static final double DRIVER_DB = 2;
  private static final double ROUNDING_DB = 0.5;

  /** Heat in a resistor that wants care, W, and how much more it is to be rated; common practice. */
  private static final double HOT_W = 5;

  private static final double RATING_OVER_HEAT = 2;

  /** A load this far from the compensated driver is not the one meant; common practice. */
  private static final double UNLIKE = 0.1;

  private static final Card<PassiveFilterRequest, PassiveFilterResult> CARD =
      Card.of("passive-filter", PassiveFilterRequest.class, PassiveFilterResult.class)
          .title("Values of a passive filter")
          .purpose(
              "Parts of a passive high-, low- or band-pass, of a level pad and of an impedance"
                  + " compensation, exact and as preferred values, and what they do into a"
                  + " resistor and with the real driver.")
          .example(
              """
              {"load_ohm": 3.4,
               "low_pass": {"kind": "linkwitz_riley", "order": 2, "frequency_hz": 2500},
               "compensate": true,
               "driver": {"re_ohm": 3.4, "le_mh": 0.5, "le_exponent": 0.7, "fs_hz": 60, "qms": 4,
                 "qes": 0.5},
               "series": "e12",
               "frequencies": {"spacing": "third_octave", "from_hz": 100, "to_hz": 20000}}
              """)
          .sources(
              LadderSynthesis.CAUER,
              FilterPrototype.BUTTERWORTH,
              FilterPrototype.LINKWITZ,
              FilterPrototype.THOMSON,
              PreferredSeries.IEC_60063,
              Ladder.KIRCHHOFF,
              ThieleSmall.SMALL_DRIVER,
              ThieleSmall.LEACH,
              CurveFrequencies.IEC_61260_1,
              LowestLoad.IEC_60268_5,
              Source.COMMON_PRACTICE)
          .limits(
              "Voltage at the driver's terminals, not sound: the driver's own response adds to it.",
              "A band-pass is the high-pass, then the low-pass, each for the resistor alone; close"
                  + " together they load each other, and the curve into the resistor shows it.",
              "Parts are without losses: put the resistance of the coils into the elements and"
                  + " work them out with passive-network.",
              "The compensation cancels the coil, exactly at one frequency, not the resonance.")
          .findings(
              INVERT_ONE_WAY,
              BAND_SIDES_INTERACT,
              DRIVER_SHIFTS_RESPONSE,
              ROUNDING_SHIFTS_RESPONSE,
              LOAD_UNLIKE_DRIVER,
              NETWORK_LOAD_TOO_LOW,
              NETWORK_LOAD_BELOW_RATED,
              AmplifierFinding.BRIDGED_MINIMUM_DOUBTFUL,
              FILTER_LOAD_LOW,
              PAD_GETS_HOT)
          .refusals(
              ORDER_NOT_PASSIVE,
              ORDER_NOT_LINKWITZ_RILEY,
              NOTHING_TO_DESIGN,
              DRIVER_MISSING,
              NOTHING_TO_COMPENSATE,
              PART_OUT_OF_REACH,
              RANGE_WITHOUT_POINTS)
          .cautions(Safety.HEAT)
          .build();

  @Override
  public Card<PassiveFilterRequest, PassiveFilterResult> card() {
    return CARD;
  }

  @Override
  public PassiveFilterResult compute(PassiveFilterRequest q, Run run) {
    double[] frequencies = q.frequencies().points();
    FilterParts parts = parts(q, run);
    FilterCurves curves =
        new FilterCurves(
            q.highPass(),
            q.lowPass(),
            q.padDb() == null ? 0 : q.padDb(),
            q.loadOhm(),
            parts,
            q.driver() == null ? null : MountedDriver.circuit(q.driver(), q.box()));
    Deviations deviations = curves.deviations(q.frequencies(), run);
    remark(q, deviations, run);
    List<Part> list = parts.list();
    remarkHeat(list, run);
    Place rounding = deviations.rounding();
    Place driver = deviations.driver();
    Place lowest =
        Extremes.ofModulus(curves.input(), q.frequencies().fromHz(), q.frequencies().toHz(), run)
            .lowest();
    if (q.amplifier() == null) {
      LowestLoad.againstRated(lowest, q.loadOhm(), run);
    } else {
      LowestLoad.againstAmplifier(lowest, q.amplifier(), q.bridged(), run);
    }
    return PassiveFilterResultBuilder.builder()
        .parts(list)
        .elements(parts.preferred())
        .corners(curves.corners())
        .roundingDb(rounding.value())
        .roundingHz(rounding.frequencyHz())
        .driverDeviationDb(driver == null ? null : driver.value())
        .driverDeviationHz(driver == null ? null : driver.frequencyHz())
        .lowestModulusOhm(lowest.value())
        .lowestHz(lowest.frequencyHz())
        .points(curves.points(frequencies))
        .build();
  }

  static FilterParts parts(PassiveFilterRequest q, Arithmetic arithmetic) {
    FilterParts parts = new FilterParts(q.series(), q.loadOhm(), q.powerW(), arithmetic);
    if (q.highPass() != null) {
      parts.highPass(q.highPass());
    }
    if (q.lowPass() != null) {
      parts.lowPass(q.lowPass());
    }
    if (q.padDb() != null) {
      parts.pad(q.padDb());
    }
    if (q.compensate()) {
      // Exact where it matters most: at the low-pass, else where le is stated.
      Driver driver = q.driver();
      parts.compensation(driver, q.lowPass() == null ? driver.leAtHz() : q.lowPass().frequencyHz());
    }
    return parts;
  }

  private static void remark(PassiveFilterRequest q, Deviations deviations, Run run) {
    Place off = deviations.exact();
    Place rounding = deviations.rounding();
    Place driver = deviations.driver();
    invert(q.highPass(), "/high_pass", run);
    invert(q.lowPass(), "/low_pass", run);
    boolean bandPass = q.highPass() != null && q.lowPass() != null;
    if (bandPass && Math.abs(off.value()) > INTERACTION_DB) {
      run.find(BAND_SIDES_INTERACT)
          .at("/high_pass")
          .value(off.value())
          .limit(INTERACTION_DB)
          .with("frequency", off.frequencyHz());
    }
    if (Math.abs(rounding.value()) > ROUNDING_DB) {
      run.find(ROUNDING_SHIFTS_RESPONSE)
          .at("/series")
          .value(rounding.value())
          .limit(ROUNDING_DB)
          .with("frequency", rounding.frequencyHz());
    }
    if (driver != null && Math.abs(driver.value()) > DRIVER_DB) {
      run.find(DRIVER_SHIFTS_RESPONSE)
          .at("/driver")
          .value(driver.value())
          .limit(DRIVER_DB)
          .with("frequency", driver.frequencyHz());
    }
    if (q.compensate() && Math.abs(q.driver().reOhm() / q.loadOhm() - 1) > UNLIKE) {
      run.find(LOAD_UNLIKE_DRIVER).at("/load_ohm").value(q.driver().reOhm()).limit(q.loadOhm());
    }
  }

  private static void remarkHeat(List<Part> parts, Run run) {
    double hottest =
        parts.stream().map(Part::heatW).filter(Objects::nonNull).reduce(0.0, Math::max);
    if (hottest > HOT_W) {
      run.find(PAD_GETS_HOT)
          .at("/pad_db")
          .value(hottest)
          .limit(HOT_W)
          .with("rating", RATING_OVER_HEAT * hottest);
    }
  }

  private static void invert(Filter filter, String at, Run run) {
    if (filter != null && filter.kind() == Kind.LINKWITZ_RILEY && filter.order() == 2) {
      run.find(INVERT_ONE_WAY).at(at).value(filter.order());
    }
  }
}
