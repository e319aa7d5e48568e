package org.footwell.vehicle;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.IntStream;
import org.footwell.calculation.Allowed;
import org.footwell.calculation.CoreFault;
import org.footwell.calculation.Names;
import org.footwell.calculation.Run;
import org.footwell.physics.Decibels;
import org.footwell.vehicle.PlanReviewResult.MeasuredLine;

/** What was measured at handover, beside what the plan predicts. */
final class Handover {

  /** A model of a cabin is not nearer than this, dB; common practice, no source. */
  private static final double LEVEL_OFF_DB = 6;

  /** A gain set with a meter is within this, dB; common practice, no source. */
  private static final double GAIN_OFF_DB = 0.5;

  /** Arrivals nearer than this are heard as one, ms; common practice, no source. */
  private static final double ARRIVAL_OFF_MS = 0.25;

  private final VehiclePlan plan;
  private final Run run;
  private final Map<String, Integer> rows = new HashMap<>();

  Handover(VehiclePlan plan, Run run) {
    this.plan = plan;
    this.run = run;
    List<String> channels = plan.channels().stream().map(VehiclePlan.Channel::id).toList();
    for (int i = 0; i < plan.measured().size(); i++) {
      MeasuredChannel measured = plan.measured().get(i);
      String at = "/measured/" + i;
      if (!channels.contains(measured.channel())) {
        run.refuse(CoreFault.DANGLING_REFERENCE)
            .at(at + "/channel")
            .given(measured.channel())
            .with("nearest", Names.didYouMean(measured.channel(), channels))
            .allowed(Allowed.fields(List.of("channels")));
      } else if (rows.putIfAbsent(measured.channel(), i) != null) {
        run.refuse(CoreFault.DUPLICATE).at(at + "/channel").given(measured.channel());
      }
    }
  }

  /** What was measured of a channel against the prediction; null where nothing was. */
  MeasuredLine line(String channel, Double levelDbSpl, Double gainTargetV, int polarity) {
    Integer row = rows.get(channel);
    if (row == null) {
      return null;
    }
    MeasuredChannel measured = plan.measured().get(row);
    Double level = difference(measured.levelDbSpl(), levelDbSpl);
    Double gain =
        measured.gainV() == null || gainTargetV == null
            ? null
            : (Double) Decibels.ofAmplitude(measured.gainV() / gainTargetV);
    Double late = late(row);
    Boolean right =
        measured.polarity() == null ? null : (Boolean) (measured.polarity() == polarity);
    String at = "/measured/" + row;
    remark(PlanFinding.MEASURED_LEVEL_OFF, at + "/level_db_spl", level, LEVEL_OFF_DB, channel);
    remark(PlanFinding.MEASURED_GAIN_OFF, at + "/gain_v", gain, GAIN_OFF_DB, channel);
    remark(PlanFinding.MEASURED_ARRIVAL_OFF, at + "/arrival_ms", late, ARRIVAL_OFF_MS, channel);
    if (right != null && !right) {
      run.find(PlanFinding.MEASURED_POLARITY_WRONG).at(at + "/polarity").own("channel", channel);
    }
    return new MeasuredLine(
        measured.levelDbSpl(), level, measured.gainV(), gain, late, measured.polarity(), right);
  }

  /** How much later than the earliest channel it arrived, ms: with all delays set none should. */
  private Double late(int row) {
    Double own = plan.measured().get(row).arrivalMs();
    List<Double> all =
        IntStream.range(0, plan.measured().size())
            .mapToObj(i -> plan.measured().get(i).arrivalMs())
            .filter(Objects::nonNull)
            .toList();
    return own == null || all.size() < 2
        ? null
        : (Double) (own - all.stream().mapToDouble(d -> d).min().orElseThrow());
  }

  private void remark(PlanFinding code, String at, Double off, double limit, String channel) {
    if (off != null && Math.abs(off) > limit) {
      run.find(code).at(at).value(off).limit(limit).own("channel", channel);
    }
  }

  private static Double difference(Double measured, Double predicted) {
    return measured == null || predicted == null ? null : (Double) (measured - predicted);
  }
}
