package org.footwell.acoustic.enclosure.lowend;

import static org.footwell.acoustic.enclosure.lowend.BoxFinding.BOX_LARGER_THAN_SPACE;
import static org.footwell.acoustic.enclosure.lowend.BoxFinding.BOX_LIKE_A_TUBE;
import static org.footwell.acoustic.enclosure.lowend.BoxFinding.CABIN_RISE_MODEL;
import static org.footwell.acoustic.enclosure.lowend.BoxFinding.CABIN_TABLE_SHORT;
import static org.footwell.acoustic.enclosure.lowend.BoxFinding.CONTINUOUS_POWER_NOT_GIVEN;
import static org.footwell.acoustic.enclosure.lowend.BoxFinding.FIGURES_BEYOND_MODEL;
import static org.footwell.acoustic.enclosure.lowend.BoxFinding.LUMPED_MODEL_LIMIT;
import static org.footwell.acoustic.enclosure.lowend.BoxFinding.PEAK_ABOVE_BASS;
import static org.footwell.acoustic.enclosure.lowend.BoxFinding.POWER_BEYOND_RATING;
import static org.footwell.acoustic.enclosure.lowend.BoxFinding.RESPONSE_PEAK_HIGH;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.footwell.acoustic.enclosure.radiator.CabinCurve;
import org.footwell.calculation.Formula;
import org.footwell.calculation.Run;
import org.footwell.calculation.Source;
import org.footwell.calculation.text.Allowed;
import org.footwell.calculation.text.Phrase;
import org.footwell.parts.Cabin.TransferPoint;
import org.footwell.physics.Air;
import org.footwell.physics.Piston;

/** What is said of every box alike. */
public final class BoxRemarks {

  /** A response that rises more than this over the reference booms (common practice, no source). */
  private static final double HIGH_PEAK_DB = 3;

  /** Where bass ends and voices begin, Hz (common practice, no source). */
  private static final double BASS_END_HZ = 200;

  /** Lengths are measured to this share: a cube's own side, rounded, is not refused. */
  private static final double MEASURED = 0.99;

  /**
   * A box whose mean section is below this share of the cone's area hardly takes the driver: even the
   * flattest box has its frame's width and its depth (common practice, no source).
   */
  private static final double SLIMMEST = 1.0 / 3;

  /** Where a length in m is an eighth of the wavelength: Hz from c in m/s. */
  static final Formula.Of2 EIGHTH_WAVE =
      Formula.of("box_limit_hz", "c/(8·L)", "Hz", Source.COMMON_PRACTICE)
          .with("c", "L", (c, length) -> c / (8 * length));

  private BoxRemarks() {}

  /**
   * Refuses a longest inside dimension that cannot hold the volume, and remarks on one that leaves no
   * room for the driver.
   *
   * @param givenMm as given, or null
   * @param grossL the air and all that is in it
   */
  public static void longest(PlayedBox q, Double givenMm, double grossL, Run run) {
    if (givenMm == null) {
      return;
    }
    double side = 1000 * BoxShape.CUBE_SIDE.at(grossL);
    if (givenMm < MEASURED * side) {
      run.refuse(BoxFault.LONGEST_TOO_SHORT)
          .at("/box/longest_inside_mm")
          .given(givenMm)
          .with("most", BoxShape.CUBE_VOLUME.at(givenMm))
          .with("volume", grossL)
          .allowed(Allowed.atLeast(Math.ceil(10 * side) / 10, "mm"));
      throw run.refused();
    }
    double section = run.apply(BoxShape.SECTION, grossL, givenMm);
    double least = SLIMMEST * q.driver().sdCm2();
    if (section < least) {
      run.find(BOX_LIKE_A_TUBE)
          .at("/box/longest_inside_mm")
          .value(section)
          .limit(least)
          .with("longest", givenMm)
          .with("volume", grossL);
    }
  }

  /** The frequency in Hz up to which box and cone are small against the wavelength. */
  public static double modelLimit(PlayedBox q, double longestM, double[] frequencies, Run run) {
    double c = Air.SPEED_OF_SOUND.at(q.temperatureC());
    double box = run.apply(EIGHTH_WAVE, c, longestM);
    double cone = run.apply(Piston.FREQUENCY_OF_KA, 1, q.driver().sdCm2(), c);
    double limit = Math.min(box, cone);
    double highest = frequencies[frequencies.length - 1];
    // The range that is only taken goes beyond most boxes' limits: that is no news.
    if (highest > limit && !q.frequencies().equals(PlayedBox.bass())) {
      run.find(LUMPED_MODEL_LIMIT).at("/frequencies").value(highest).limit(limit);
    }
    return limit;
  }

  /** The figures of any box that stand at a frequency, by what a fitter calls them. */
  public static Map<BoxFigure, Double> figures(BoxResponse response, BoxLimits limits) {
    Map<BoxFigure, Double> figures = new EnumMap<>(BoxFigure.class);
    if (response.f3Hz() != null) {
      figures.put(BoxFigure.F3, response.f3Hz());
    }
    if (isHigh(response)) {
      figures.put(BoxFigure.PEAK, response.peakHz());
    }
    figures.put(BoxFigure.LARGEST_DISPLACEMENT, limits.largestDisplacementHz());
    return figures;
  }

  /**
   * Says which figures of the answer lie where the model no longer holds.
   *
   * @param figures what they are called, with their frequencies in Hz
   */
  public static void beyondModel(Map<BoxFigure, Double> figures, double limit, Run run) {
    List<Map.Entry<BoxFigure, Double>> beyond =
        figures.entrySet().stream().filter(figure -> figure.getValue() > limit).toList();
    if (!beyond.isEmpty()) {
      run.find(FIGURES_BEYOND_MODEL)
          .at("/box")
          .value(beyond.stream().mapToDouble(Map.Entry::getValue).max().orElseThrow())
          .limit(limit)
          .with(
              "what",
              beyond.stream()
                  .map(
                      figure ->
                          Phrase.of(BoxFigure.AT)
                              .with("figure", figure.getKey())
                              .with("frequency", figure.getValue()))
                  .toList());
    }
  }

  /** The power of the drive in W against the rating. */
  public static void power(PlayedBox q, double power, Run run) {
    Double continuous = q.driver().continuousPowerW();
    if (continuous == null) {
      run.find(CONTINUOUS_POWER_NOT_GIVEN).at("/driver/continuous_power_w").value(power);
    } else if (power > continuous) {
      run.find(POWER_BEYOND_RATING)
          .at(q.powerW() == null ? "/voltage_v" : "/power_w")
          .value(power)
          .limit(continuous);
    }
  }

  /** A peak that is heard, by where it lies. */
  public static void peak(BoxResponse response, Run run) {
    if (isHigh(response)) {
      run.find(response.peakHz() > BASS_END_HZ ? PEAK_ABOVE_BASS : RESPONSE_PEAK_HIGH)
          .at("/box")
          .value(response.peakDb())
          .limit(HIGH_PEAK_DB)
          .with("frequency", response.peakHz());
    }
  }

  static boolean isHigh(BoxResponse response) {
    return response.peakDb() > HIGH_PEAK_DB;
  }

  /** The volume with all that is in it against the room there is, both in litre. */
  public static void space(Double spaceL, double grossL, Run run) {
    if (spaceL != null && grossL > spaceL) {
      run.find(BOX_LARGER_THAN_SPACE).at("/box/space_l").value(grossL).limit(spaceL);
    }
  }

  /** The cabin of the request and what its model or table is worth, or null without one. */
  public static CabinCurve cabin(PlayedBox q, double[] frequencies, Run run) {
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
