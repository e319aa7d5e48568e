package org.footwell.acoustic.exposure;

import java.util.ArrayList;
import java.util.List;
import org.footwell.acoustic.exposure.SoundExposureRequest.Period;
import org.footwell.acoustic.exposure.SoundExposureResult.Dose;
import org.footwell.acoustic.exposure.SoundExposureResult.Line;
import org.footwell.calculation.Calculation;
import org.footwell.calculation.Card;
import org.footwell.calculation.Formula;
import org.footwell.calculation.Run;
import org.footwell.calculation.Source;
import org.footwell.parts.Safety;
import org.footwell.physics.Decibels;
import org.footwell.physics.FrequencyWeighting;
import org.footwell.physics.NoiseDose;
import org.footwell.physics.ThirdOctaves;

/** How much of a day's noise a list of levels and durations is. */
public final class SoundExposure implements Calculation<SoundExposureRequest, SoundExposureResult> {

  /** Level from which on the permissible exposure of 29 CFR 1910.95 counts, dBA. */
  private static final double PERMISSIBLE_FROM_DBA = 90;

  private static final Formula.Of1 EIGHT_HOUR_LEVEL =
      Formula.of(
              "eight_hour_level_dba",
              "10·lg(E/8 h), E the sum of C·10^(L/10)",
              "dBA",
              Source.of("ISO 1999:2013: noise exposure level normalized to an 8 h working day"))
          .with("E", e -> Decibels.ofPower(e / 8));
  private static final Formula.Of2 C_MINUS_A =
      Formula.of("c_minus_a_db", "LC − LA", "dB", Source.DEFINITION)
          .with("LC", "LA", (c, a) -> c - a);
  private static final Formula.Of2 REMAINING =
      Formula.of("remaining_h", "T·max(0, 1 − D/100)", "h", Source.DEFINITION)
          .with("T", "D", (t, d) -> t * Math.max(0, 1 - d / 100));

  private static final Card<SoundExposureRequest, SoundExposureResult> CARD =
      Card.of("sound-exposure", SoundExposureRequest.class, SoundExposureResult.class)
          .title("Sound exposure of a day")
          .purpose(
              "How much of a day's noise is a list of levels and durations, by the recommendation"
                  + " of NIOSH and by 29 CFR 1910.95; how long may one go on, and how much bass"
                  + " does the A-weighting hide.")
          .example(
              """
              {"periods": [
                 {"duration_h": 0.5, "level_dba": 94, "level_dbc": 108, "peak_level_dbc": 126},
                 {"duration_h": 1.5, "level_dba": 72},
                 {"duration_h": 0.25, "spectrum": "bass demo"}],
               "bands": [
                 {"spectrum": "bass demo", "frequency_hz": 31.5, "level_db_spl": 112},
                 {"spectrum": "bass demo", "frequency_hz": 63, "level_db_spl": 110},
                 {"spectrum": "bass demo", "frequency_hz": 125, "level_db_spl": 98},
                 {"spectrum": "bass demo", "frequency_hz": 1000, "level_db_spl": 88}]}
              """)
          .sources(
              NoiseDose.NIOSH,
              NoiseDose.CFR_1910_95,
              NoiseDose.DIRECTIVE_2003_10,
              FrequencyWeighting.IEC_61672_1,
              ThirdOctaves.IEC_61260_1,
              EIGHT_HOUR_LEVEL.formula().source(),
              Source.COMMON_PRACTICE)
          .limits(
              "Both rules are made for work places and a working life, not for leisure, children"
                  + " or ears already damaged: a caution, not a promise of safety.",
              "Levels are those at the ear over the whole period; a spectrum is one of bands that"
                  + " do not overlap.",
              "Bass is judged by its A-weighted level only, as the rules do; what it does to"
                  + " attention and to the vehicle is not in it.")
          .findings(ExposureFinding.values())
          .refusals(ExposureFault.values())
          .cautions(Safety.HEARING)
          .build();

  @Override
  public Card<SoundExposureRequest, SoundExposureResult> card() {
    return CARD;
  }

  @Override
  public SoundExposureResult compute(SoundExposureRequest q, Run run) {
    Spectra spectra = new Spectra(q, run);

    List<Line> lines = new ArrayList<>();
    double energy = 0;
    double hours = 0;
    double permissible = 0;
    for (int i = 0; i < q.periods().size(); i++) {
      Period period = q.periods().get(i);
      Line line = line(period, spectra, run);
      lines.add(line);
      ExposureRemarks.onPeriod(i, period, line, run);
      energy += line.durationH() * Decibels.toPower(line.levelDba());
      hours += line.durationH();
      permissible += line.levelDba() < PERMISSIBLE_FROM_DBA ? 0 : line.cfrDosePercent();
    }
    double last = lines.get(lines.size() - 1).levelDba();
    double niosh = lines.stream().mapToDouble(Line::nioshDosePercent).sum();
    double cfr = lines.stream().mapToDouble(Line::cfrDosePercent).sum();
    ExposureRemarks.onDay(niosh, cfr, permissible, run);
    return new SoundExposureResult(
        dose(niosh, last, NoiseDose.NIOSH_ALLOWED_H, NoiseDose.NIOSH_TWA, run),
        dose(cfr, last, NoiseDose.CFR_REFERENCE_H, NoiseDose.CFR_TWA, run),
        permissible,
        run.apply(EIGHT_HOUR_LEVEL, energy),
        hours,
        lines);
  }

  private static Line line(Period period, Spectra spectra, Run run) {
    double level;
    Double levelC = period.levelDbc();
    if (period.spectrum() == null) {
      level = period.levelDba();
    } else {
      String name = period.spectrum();
      double raised = period.levelDbSpl() == null ? 0 : period.levelDbSpl() - spectra.level(name);
      level = spectra.weighted(name, FrequencyWeighting.A) + raised;
      levelC = spectra.weighted(name, FrequencyWeighting.C) + raised;
    }
    return new Line(
        level,
        levelC,
        levelC == null ? null : Double.valueOf(run.apply(C_MINUS_A, levelC, level)),
        period.durationH(),
        percent(period.durationH(), level, NoiseDose.NIOSH_ALLOWED_H, run),
        percent(period.durationH(), level, NoiseDose.CFR_REFERENCE_H, run));
  }

  private static double percent(double hours, double level, Formula.Of1 allowed, Run run) {
    return level < NoiseDose.COUNTED_DBA
        ? 0
        : run.apply(NoiseDose.DOSE_PERCENT, hours, run.apply(allowed, level));
  }

  private static Dose dose(
      double percent, double lastLevel, Formula.Of1 allowed, Formula.Of1 twa, Run run) {
    return new Dose(
        percent,
        percent == 0 ? null : Double.valueOf(run.apply(twa, percent)),
        lastLevel < NoiseDose.COUNTED_DBA
            ? null
            : Double.valueOf(run.apply(REMAINING, run.apply(allowed, lastLevel), percent)));
  }
}
