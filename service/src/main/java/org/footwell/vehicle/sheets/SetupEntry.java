package org.footwell.vehicle.sheets;

import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import org.footwell.calculation.text.Measure;
import org.footwell.calculation.text.Words;
import org.footwell.vehicle.PlanReviewResult.MeasuredLine;
import org.footwell.vehicle.PlanReviewResult.SetLine;
import org.footwell.vehicle.PlanReviewResult.SetupLine;

/** A row of the setup sheet: what stands in it for a channel, by its column in CSV. */
enum SetupEntry implements Words {
  AMPLIFIER(SetupLine::amplifier),
  OUTPUTS(SetupLine::outputs),
  METER_OHM(SetupLine::meterOhm),
  HIGH_PASS(SetupLine::highPass),
  LOW_PASS(SetupLine::lowPass),
  EQUALISER(SetupLine::equaliser),
  TONE_HZ(SetupLine::toneHz),
  TONE_DBFS(SetupLine::toneDbfs),
  VOLUME_STEP(SetupLine::volumeStep),
  TERMINALS(SetupLine::terminals),
  GAIN_TARGET_V(SetupLine::gainTargetV),
  GAIN_V(set(SetLine::gainV)),
  TRIM_DB(SetupLine::trimDb),
  TRIM_SET_DB(set(SetLine::trimDb)),
  DELAY_MS(SetupLine::delayMs),
  DELAY_SET_MS(set(SetLine::delayMs)),
  DELAY_SAMPLES(SetupLine::delaySamples),
  DELAY_MM(SetupLine::delayMm),
  POLARITY(line -> Turned.of(line.polarity())),
  LIMITER_RMS_V(SetupLine::limiterRmsV),
  LIMITER_PEAK_V(SetupLine::limiterPeakV),
  LEVEL_DB_SPL(SetupLine::levelDbSpl),
  MEASURED_LEVEL_DB_SPL(measured(MeasuredLine::levelDbSpl)),
  MEASURED_METER_OHM(measured(MeasuredLine::meterOhm)),
  MEASURED_LATE_MS(measured(MeasuredLine::lateMs)),
  MEASURED_POLARITY(measured(line -> Turned.of(line.polarity())));

  /** How a channel is poled. */
  enum Turned implements Words {
    NORMAL,
    INVERTED;

    private static Turned of(Integer polarity) {
      return polarity == null ? null : polarity == 1 ? NORMAL : INVERTED;
    }
  }

  private final Function<SetupLine, Object> of;

  SetupEntry(Function<SetupLine, Object> of) {
    this.of = of;
  }

  /** What it is called in CSV. */
  String column() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** What stands in it for a channel, or null: a number, a filter or a list of such, words, or a name. */
  Object of(SetupLine line) {
    Object found = of.apply(line);
    return found instanceof List<?> list && list.isEmpty() ? null : found;
  }

  /** The unit of its numbers; of a count null. */
  Measure measure() {
    return this == DELAY_SAMPLES ? null : Measure.ofName(column()).orElse(null);
  }

  private static Function<SetupLine, Object> set(Function<SetLine, Object> of) {
    return line -> line.set() == null ? null : of.apply(line.set());
  }

  private static Function<SetupLine, Object> measured(Function<MeasuredLine, Object> of) {
    return line -> line.measured() == null ? null : of.apply(line.measured());
  }
}
