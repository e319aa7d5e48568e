package org.footwell.measured.correction;

import java.util.ArrayList;
import java.util.List;
import org.footwell.Answers;
import org.footwell.calculation.Answer;
import org.footwell.measured.correction.ResponseCorrectionRequest.Channel;
import org.footwell.measured.correction.ResponseCorrectionRequest.FilterLimits;
import org.footwell.measured.response.ChannelTake;
import org.footwell.measured.response.Gate;
import org.footwell.measured.response.MadeUpResponse;
import org.footwell.measured.response.MicrophonePosition;
import org.footwell.measured.response.PlayedSweep;
import org.footwell.measured.response.RecordedKind;
import org.footwell.parts.LevelAt;
import org.footwell.parts.TargetCurve;
import org.footwell.recording.Recording;

/** A request in the making. */
public final class CorrectionSession {

  static final ResponseCorrection CALCULATION = new ResponseCorrection();

  PlayedSweep sweep;
  final List<Channel> channels = new ArrayList<>();
  final List<MicrophonePosition> microphones = new ArrayList<>();
  final List<ChannelTake> takes = new ArrayList<>();
  double processorRateHz = 48_000;
  TargetCurve target;
  FilterLimits filters;
  Integer smoothingPerOctave;
  Double movingDipDb;
  Gate gate;
  List<LevelAt> calibration;

  /** A session with so many microphone positions m0, m1, … */
  public static CorrectionSession at(int positions) {
    CorrectionSession session = new CorrectionSession();
    for (int m = 0; m < positions; m++) {
      session.microphones.add(new MicrophonePosition("m" + m, null));
    }
    return session;
  }

  /** One channel with a response for every position. */
  public CorrectionSession channel(String id, Double from, Double to, MadeUpResponse... heard) {
    channels.add(new Channel(id, from, to));
    for (int m = 0; m < heard.length; m++) {
      Recording recording = Recording.of(MadeUpResponse.RATE_HZ, heard[m].samples());
      takes.add(new ChannelTake(id, "m" + m, recording));
    }
    return this;
  }

  static FilterLimits limits(int count, double boostDb) {
    return new FilterLimits(count, boostDb, null, null, null, null, null);
  }

  public ResponseCorrectionRequest request() {
    return ResponseCorrectionRequestBuilder.builder()
        .kind(sweep == null ? RecordedKind.IMPULSE_RESPONSE : RecordedKind.SWEEP)
        .sweep(sweep)
        .channels(channels)
        .microphones(microphones)
        .recordings(takes)
        .processorRateHz(processorRateHz)
        .target(target)
        .filters(filters)
        .smoothingPerOctave(smoothingPerOctave)
        .movingDipDb(movingDipDb)
        .gate(gate)
        .calibration(calibration)
        .build();
  }

  Answer<ResponseCorrectionResult> answer() {
    return Answers.of(CALCULATION, request());
  }

  List<String> faults() {
    return Answers.faults(CALCULATION, request()).stream()
        .map(fault -> fault.pointer() + " " + fault.code())
        .toList();
  }
}
