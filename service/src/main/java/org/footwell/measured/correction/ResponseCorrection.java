package org.footwell.measured.correction;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.footwell.calculation.Calculation;
import org.footwell.calculation.Card;
import org.footwell.calculation.Run;
import org.footwell.calculation.Source;
import org.footwell.measured.correction.ResponseCorrectionRequest.FilterLimits;
import org.footwell.measured.response.Gate;
import org.footwell.measured.response.ImpulseResponses;
import org.footwell.measured.response.JudgedChannel;
import org.footwell.measured.response.MeasurementFault;
import org.footwell.measured.response.PositionPowers;
import org.footwell.parts.LevelAt;
import org.footwell.parts.Safety;
import org.footwell.physics.ThirdOctaves;
import org.footwell.signal.ExponentialSweep;
import org.footwell.signal.PlayingBand;
import org.footwell.signal.SectionDesign;
import org.footwell.signal.Spectrum;
import org.footwell.signal.SweepDeconvolution;

/** Parametric filters that bring the mean of several microphone positions to a wanted curve. */
public final class ResponseCorrection
    implements Calculation<ResponseCorrectionRequest, ResponseCorrectionResult> {

  private static final Card<ResponseCorrectionRequest, ResponseCorrectionResult> CARD =
      Card.of(
              "response-correction",
              ResponseCorrectionRequest.class,
              ResponseCorrectionResult.class)
          .title("Correction of a measured response")
          .purpose(
              "Which few parametric filters bring each channel, averaged over the microphone"
                  + " positions, to a wanted curve without boosting dips that move with the head;"
                  + " how far off it is before and after, and what headroom the filters need.")
          .example(CorrectionExample.json())
          .sources(
              FilterFit.LEVENBERG_MARQUARDT,
              SectionDesign.COOKBOOK,
              ThirdOctaves.IEC_61260_1,
              Spectrum.TRANSFORM,
              ExponentialSweep.FARINA,
              SweepDeconvolution.DIVISION,
              Gate.RESOLUTION,
              Source.COMMON_PRACTICE)
          .limits(
              "Magnitudes only: what is wrong in time, by reflections or between channels, stays.",
              "The curve after correction is predicted at the microphone positions, not measured:"
                  + " measure again.",
              "A dip that moves is known by the spread between positions, so by three or more"
                  + " positions about a head's width apart; with one position it cannot be told.",
              "Filters are fitted one after the other and then together; a better set may exist.",
              "At most 8 channels in one request.")
          .findings(CorrectionFinding.values())
          .refusals(
              MeasurementFault.and(
                  CorrectionFault.CORRECTION_RANGE_EMPTY, CorrectionFault.NOTHING_TO_CORRECT))
          .cautions(Safety.HEARING)
          .build();

  @Override
  public Card<ResponseCorrectionRequest, ResponseCorrectionResult> card() {
    return CARD;
  }

  @Override
  public ResponseCorrectionResult compute(ResponseCorrectionRequest q, Run run) {
    double[] points = CorrectedRanges.points(q);
    ImpulseResponses responses = q.responses(run);
    double[] target = at(points, q.target().curve());
    double[] calibration =
        at(points, q.calibration() == null ? f -> 0 : LevelAt.curve(q.calibration()));
    CorrectionRemarks remarks = new CorrectionRemarks(q, run);
    List<Correction> all = new ArrayList<>();
    double limitHz = 0;
    for (int c = 0; c < q.channels().size(); c++) {
      JudgedChannel channel = q.channels().get(c);
      PositionPowers heard =
          PositionPowers.of(
              q.heard(channel.id()),
              q.gate(),
              responses,
              points,
              q.smoothingPerOctave(),
              calibration,
              run);
      limitHz = Math.max(limitHz, run.apply(Gate.LIMIT, heard.lengthS()));
      PlayingBand band = band(channel, points, heard);
      PlayingBand range = band == null ? null : remarks.told(c, points, band, heard);
      if (range == null) {
        run.refuse(CorrectionFault.NOTHING_TO_CORRECT).at("/channels/" + c).given(channel.id());
        continue;
      }
      all.add(
          new Correction(
              points,
              range,
              heard,
              target,
              q.movingDipDb(),
              scope(q.filters()),
              q.processorRateHz(),
              run));
    }
    run.requireNoFaults();
    List<ResponseCorrectionResult.ChannelCorrection> channels = new ArrayList<>();
    List<ResponseCorrectionResult.Section> sections = new ArrayList<>();
    List<ResponseCorrectionResult.Octave> octaves = new ArrayList<>();
    List<ResponseCorrectionResult.Point> curves = new ArrayList<>();
    for (int c = 0; c < all.size(); c++) {
      Correction one = all.get(c);
      String id = q.channels().get(c).id();
      channels.add(one.channel(id));
      sections.addAll(one.sections(id));
      octaves.addAll(one.octaves(id));
      curves.addAll(one.points(id));
    }
    remarks.on(all, channels);
    return new ResponseCorrectionResult(channels, sections, octaves, curves, limitHz);
  }

  private static FilterScope scope(FilterLimits limits) {
    return new FilterScope(
        limits.count(),
        limits.boostDb(),
        limits.cutDb(),
        limits.lowestQ(),
        limits.highestQ(),
        limits.fromHz(),
        limits.toHz());
  }

  private static double[] at(double[] points, DoubleUnaryOperator curve) {
    return Arrays.stream(points).map(curve).toArray();
  }

  private static PlayingBand band(JudgedChannel channel, double[] points, PositionPowers heard) {
    if (channel.fromHz() == null) {
      return heard.band(points, Correction.PER_OCTAVE);
    }
    int first = 0;
    while (points[first] < channel.fromHz()) {
      first++;
    }
    int last = points.length - 1;
    while (points[last] > channel.toHz()) {
      last--;
    }
    return new PlayingBand(first, last);
  }
}
