package org.footwell.measured.correction;

import java.util.ArrayList;
import java.util.List;
import org.footwell.RequestUnderTest;
import org.footwell.measured.correction.ResponseCorrectionRequest.FilterLimits;
import org.footwell.measured.response.ChannelTake;
import org.footwell.measured.response.JudgedChannel;
import org.footwell.measured.response.MadeUpResponse;
import org.footwell.measured.response.MicrophonePosition;
import org.footwell.measured.response.PlayedSweep;
import org.footwell.measured.response.RecordedKind;
import org.footwell.recording.Recording;

/** A measuring session: channels heard at microphones, to be corrected by a processor at 48 kHz. */
public final class CorrectionSession
    extends RequestUnderTest<ResponseCorrectionRequest, ResponseCorrectionResult> {

  final List<JudgedChannel> channels = new ArrayList<>();
  private final List<MicrophonePosition> microphones = new ArrayList<>();
  private final List<ChannelTake> takes = new ArrayList<>();
  final ResponseCorrectionRequestBuilder draft =
      ResponseCorrectionRequestBuilder.builder()
          .kind(RecordedKind.IMPULSE_RESPONSE)
          .channels(channels)
          .microphones(microphones)
          .recordings(takes)
          .processorRateHz(48_000.0);

  private CorrectionSession() {
    super(new ResponseCorrection());
  }

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
    channels.add(new JudgedChannel(id, from, to));
    for (int m = 0; m < heard.length; m++) {
      Recording recording = Recording.of(MadeUpResponse.RATE_HZ, heard[m].samples());
      takes.add(new ChannelTake(id, "m" + m, recording));
    }
    return this;
  }

  /** The recordings are of a sweep. */
  CorrectionSession playing(double fromHz, double toHz, double seconds) {
    draft.kind(RecordedKind.SWEEP).sweep(new PlayedSweep(fromHz, toHz, seconds, null));
    return this;
  }

  static FilterLimits limits(int count, double boostDb) {
    return ResponseCorrectionRequestFilterLimitsBuilder.builder()
        .count(count)
        .boostDb(boostDb)
        .build();
  }

  @Override
  public ResponseCorrectionRequest request() {
    return draft.build();
  }
}
