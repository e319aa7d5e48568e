package org.footwell.measured.correction;

import static org.footwell.measured.correction.CorrectionFinding.CORRECTION_RANGE_FOUND;
import static org.footwell.measured.correction.CorrectionFinding.DIPS_NOT_TESTED;
import static org.footwell.measured.correction.CorrectionFinding.ERROR_LEFT;
import static org.footwell.measured.correction.CorrectionFinding.FOUND_RANGE_BEYOND_SWEEP;
import static org.footwell.measured.correction.CorrectionFinding.HEADROOM_NEEDED;
import static org.footwell.measured.correction.CorrectionFinding.LITTLE_GAINED;
import static org.footwell.measured.correction.CorrectionFinding.MOVING_DIP_LEFT;
import static org.footwell.measured.correction.CorrectionFinding.RANGE_BEYOND_GATE;
import static org.footwell.measured.correction.CorrectionFinding.RANGE_BEYOND_SWEEP;
import static org.footwell.measured.correction.CorrectionFinding.RANGE_NEAR_NOISE;

import java.util.List;
import org.footwell.calculation.Run;
import org.footwell.measured.response.JudgedChannel;
import org.footwell.measured.response.PositionPowers;
import org.footwell.signal.PlayingBand;

/** What is remarked on. Thresholds are common practice without a source. */
final class CorrectionRemarks {

  private static final double DEEP_DIP_DB = 3;
  private static final double HEADROOM_DB = 0.1;
  private static final double GAINED_DB = 0.3;
  private static final double MUCH_LEFT_DB = 3;

  private final ResponseCorrectionRequest q;
  private final Run run;

  CorrectionRemarks(ResponseCorrectionRequest q, Run run) {
    this.q = q;
    this.run = run;
  }

  /** The part of a channel's range that gate and sweep tell; null if that is nothing. */
  PlayingBand told(int c, double[] points, PlayingBand band, PositionPowers heard) {
    JudgedChannel channel = q.channels().get(c);
    String at = "/channels/" + c;
    PlayingBand swept = heard.told(band);
    if (swept == null) {
      return null;
    }
    if (!band.equals(swept)) {
      run.find(channel.fromHz() == null ? FOUND_RANGE_BEYOND_SWEEP : RANGE_BEYOND_SWEEP)
          .at(at)
          .value(points[band.first()])
          .limit(points[band.last()])
          .with("from", points[swept.first()])
          .with("to", points[swept.last()])
          .own("name", channel.id());
    }
    int first = swept.first();
    int last = swept.last();
    double limit = 1 / heard.lengthS();
    int open = first;
    while (open <= last && points[open] < limit) {
      open++;
    }
    if (open > first) {
      run.find(RANGE_BEYOND_GATE)
          .at("/gate")
          .value(points[first])
          .limit(limit)
          .own("name", channel.id());
    }
    if (open > last) {
      return null;
    }
    if (channel.fromHz() == null) {
      run.find(CORRECTION_RANGE_FOUND)
          .at(at)
          .value(points[open])
          .limit(points[last])
          .own("name", channel.id());
    }
    noise(at, channel.id(), points, new PlayingBand(open, last), heard);
    return new PlayingBand(open, last);
  }

  private void noise(
      String at, String id, double[] points, PlayingBand range, PositionPowers heard) {
    int worst = range.first();
    for (int i = worst; i <= range.last(); i++) {
      worst = heard.aboveNoiseDb(i) < heard.aboveNoiseDb(worst) ? i : worst;
    }
    if (heard.aboveNoiseDb(worst) < Correction.NEAR_NOISE_DB) {
      run.find(RANGE_NEAR_NOISE)
          .at(at)
          .value(heard.aboveNoiseDb(worst))
          .limit(Correction.NEAR_NOISE_DB)
          .own("name", id)
          .with("frequency", points[worst]);
    }
  }

  void on(List<Correction> all, List<ResponseCorrectionResult.ChannelCorrection> results) {
    for (int c = 0; c < all.size(); c++) {
      on(all.get(c), results.get(c), "/channels/" + c);
    }
    if (q.microphones().size() == 1) {
      run.find(DIPS_NOT_TESTED).at("/microphones");
    }
  }

  private void on(Correction one, ResponseCorrectionResult.ChannelCorrection result, String at) {
    int dip = one.movingDip();
    if (dip >= 0 && one.depth(dip) > DEEP_DIP_DB) {
      run.find(MOVING_DIP_LEFT)
          .at(at)
          .value(one.spreadDb(dip))
          .limit(q.movingDipDb())
          .own("name", result.id())
          .with("depth", one.depth(dip))
          .with("frequency", one.frequencyHz(dip));
    }
    if (result.headroomDb() > HEADROOM_DB) {
      run.find(HEADROOM_NEEDED)
          .at(at)
          .value(result.headroomDb())
          .own("name", result.id())
          .with("frequency", result.headroomHz());
    }
    if (result.errorAfterDb() > result.errorBeforeDb() - GAINED_DB) {
      run.find(LITTLE_GAINED)
          .at(at)
          .value(result.errorAfterDb())
          .with("before", result.errorBeforeDb())
          .own("name", result.id());
    }
    if (result.errorAfterDb() > MUCH_LEFT_DB) {
      run.find(ERROR_LEFT)
          .at(at)
          .value(result.errorAfterDb())
          .limit(MUCH_LEFT_DB)
          .own("name", result.id());
    }
  }
}
