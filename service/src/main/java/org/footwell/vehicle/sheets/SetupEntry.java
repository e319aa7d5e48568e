package org.footwell.vehicle.sheets;

import java.util.List;
import java.util.Locale;
import org.footwell.calculation.text.Measure;
import org.footwell.calculation.text.Words;
import org.footwell.vehicle.PlanReviewResult.MeasuredLine;
import org.footwell.vehicle.PlanReviewResult.SetLine;
import org.footwell.vehicle.PlanReviewResult.SetupLine;

/** A row of the setup sheet: what stands in it for a channel, by its column in CSV. */
enum SetupEntry implements Words {
  AMPLIFIER,
  OUTPUTS,
  METER_OHM,
  HIGH_PASS,
  LOW_PASS,
  EQUALISER,
  TONE_HZ,
  TONE_DBFS,
  VOLUME_STEP,
  TERMINALS,
  GAIN_TARGET_V,
  GAIN_V,
  TRIM_DB,
  TRIM_SET_DB,
  DELAY_MS,
  DELAY_SET_MS,
  DELAY_SAMPLES,
  DELAY_MM,
  POLARITY,
  LIMITER_RMS_V,
  LIMITER_PEAK_V,
  LEVEL_DB_SPL,
  MEASURED_LEVEL_DB_SPL,
  MEASURED_METER_OHM,
  MEASURED_LATE_MS,
  MEASURED_POLARITY;

  /** How a channel is poled. */
  enum Turned implements Words {
    NORMAL,
    INVERTED;

    private static Turned of(Integer polarity) {
      return polarity == null ? null : polarity == 1 ? NORMAL : INVERTED;
    }
  }

  /** What it is called in CSV. */
  String column() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** What stands in it for a channel, or null: a number, a filter or a list of such, words, or a name. */
  Object of(SetupLine line) {
    Object found = found(line, line.set(), line.measured());
    return found instanceof List<?> list && list.isEmpty() ? null : found;
  }

  private Object found(SetupLine line, SetLine set, MeasuredLine measured) {
    return switch (this) {
      case AMPLIFIER -> line.amplifier();
      case OUTPUTS -> line.outputs();
      case METER_OHM -> line.meterOhm();
      case HIGH_PASS -> line.highPass();
      case LOW_PASS -> line.lowPass();
      case EQUALISER -> line.equaliser();
      case TONE_HZ -> line.toneHz();
      case TONE_DBFS -> line.toneDbfs();
      case VOLUME_STEP -> line.volumeStep();
      case TERMINALS -> line.terminals();
      case GAIN_TARGET_V -> line.gainTargetV();
      case GAIN_V -> set == null ? null : set.gainV();
      case TRIM_DB -> line.trimDb();
      case TRIM_SET_DB -> set == null ? null : set.trimDb();
      case DELAY_MS -> line.delayMs();
      case DELAY_SET_MS -> set == null ? null : set.delayMs();
      case DELAY_SAMPLES -> line.delaySamples();
      case DELAY_MM -> line.delayMm();
      case POLARITY -> Turned.of(line.polarity());
      case LIMITER_RMS_V -> line.limiterRmsV();
      case LIMITER_PEAK_V -> line.limiterPeakV();
      case LEVEL_DB_SPL -> line.levelDbSpl();
      case MEASURED_LEVEL_DB_SPL -> measured == null ? null : measured.levelDbSpl();
      case MEASURED_METER_OHM -> measured == null ? null : measured.meterOhm();
      case MEASURED_LATE_MS -> measured == null ? null : measured.lateMs();
      case MEASURED_POLARITY -> measured == null ? null : Turned.of(measured.polarity());
    };
  }

  /** The unit of its numbers; of a count null. */
  Measure measure() {
    return this == DELAY_SAMPLES ? null : Measure.ofName(column()).orElse(null);
  }
}
