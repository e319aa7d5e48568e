package org.footwell.enclosure;

import static org.footwell.enclosure.EnclosureFinding.BOX_LARGER_THAN_SPACE;
import static org.footwell.enclosure.EnclosureFinding.CABIN_RISE_MODEL;
import static org.footwell.enclosure.EnclosureFinding.CABIN_TABLE_SHORT;
import static org.footwell.enclosure.EnclosureFinding.LUMPED_MODEL_LIMIT;
import static org.footwell.enclosure.EnclosureFinding.POWER_BEYOND_RATING;
import static org.footwell.enclosure.EnclosureFinding.RESPONSE_PEAK_HIGH;

import java.util.List;
import org.footwell.calculation.Formula;
import org.footwell.calculation.Run;
import org.footwell.calculation.Source;
import org.footwell.physics.Air;
import org.footwell.physics.Piston;
import org.footwell.radiator.CabinCurve;
import org.footwell.radiator.CabinResponse.TransferPoint;

/** What is said of every box alike. */
final class BoxRemarks {

  /** A response that rises more than this over the reference booms (common practice, no source). */
  private static final double HIGH_PEAK_DB = 3;

  /** Where a length in m is an eighth of the wavelength: Hz from c in m/s. */
  static final Formula.Of2 EIGHTH_WAVE =
      Formula.of("box_limit_hz", "c/(8·L)", "Hz", Source.COMMON_PRACTICE)
          .with("c", "L", (c, length) -> c / (8 * length));

  /** The side in m of a cube of some litre. */
  static final Formula.Of1 CUBE_SIDE =
      Formula.of("side_m", "∛(V/1000)", "m", Source.DEFINITION)
          .with("V", litre -> Math.cbrt(litre / 1000));

  private BoxRemarks() {}

  /** The longest inside dimension in m: the given one in mm, or that of a cube. */
  static double longestM(Double givenMm, double volumeL, Run run) {
    return givenMm == null ? run.apply(CUBE_SIDE, volumeL) : givenMm / 1000;
  }

  /** The frequency in Hz up to which box and cone are small against the wavelength. */
  static double modelLimit(PlayedBox q, double longestM, double[] frequencies, Run run) {
    double c = Air.SPEED_OF_SOUND.at(q.temperatureC());
    double box = run.apply(EIGHTH_WAVE, c, longestM);
    double cone = run.apply(Piston.FREQUENCY_OF_KA, 1, q.driver().sdCm2(), c);
    double limit = Math.min(box, cone);
    double highest = frequencies[frequencies.length - 1];
    if (highest > limit) {
      run.find(LUMPED_MODEL_LIMIT).at("/frequencies").value(highest).limit(limit);
    }
    return limit;
  }

  static void power(PlayedBox q, double power, Run run) {
    Double continuous = q.driver().continuousPowerW();
    if (continuous != null && power > continuous) {
      run.find(POWER_BEYOND_RATING)
          .at(q.powerW() == null ? "/voltage_v" : "/power_w")
          .value(power)
          .limit(continuous);
    }
  }

  static void peak(BoxResponse response, Run run) {
    if (response.peakDb() > HIGH_PEAK_DB) {
      run.find(RESPONSE_PEAK_HIGH)
          .at("/box")
          .value(response.peakDb())
          .limit(HIGH_PEAK_DB)
          .with("frequency", response.peakHz());
    }
  }

  static void space(Double spaceL, double grossL, Run run) {
    if (spaceL != null && grossL > spaceL) {
      run.find(BOX_LARGER_THAN_SPACE).at("/box/space_l").value(grossL).limit(spaceL);
    }
  }

  /** The cabin of the request and what its model or table is worth, or null without one. */
  static CabinCurve cabin(PlayedBox q, double[] frequencies, Run run) {
    if (q.cabin() == null) {
      return null;
    }
    CabinCurve curve = new CabinCurve(q.cabin(), q.temperatureC());
    List<TransferPoint> table = q.cabin().transfer();
    if (table == null) {
      run.find(CABIN_RISE_MODEL)
          .at("/cabin")
          .value(curve.cornerHz())
          .with("cap", q.cabin().gainCapDb());
    } else if (frequencies[0] < table.get(0).frequencyHz()
        || frequencies[frequencies.length - 1] > table.get(table.size() - 1).frequencyHz()) {
      run.find(CABIN_TABLE_SHORT)
          .at("/cabin/transfer")
          .with("from", table.get(0).frequencyHz())
          .with("to", table.get(table.size() - 1).frequencyHz());
    }
    return curve;
  }
}
