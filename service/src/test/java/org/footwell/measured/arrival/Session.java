package org.footwell.measured.arrival;

import java.util.ArrayList;
import java.util.List;
import org.footwell.RequestUnderTest;
import org.footwell.measured.arrival.ArrivalTimesRequest.RecordedChannel;
import org.footwell.measured.arrival.ArrivalTimesRequest.Take;
import org.footwell.measured.arrival.ArrivalTimesRequest.TimeReference;
import org.footwell.measured.response.LeftAndRight;
import org.footwell.measured.response.MicrophonePosition;
import org.footwell.measured.response.PlayedSweep;
import org.footwell.measured.response.RecordedKind;
import org.footwell.recording.Recording;

/** A measuring session: channels heard at microphones, all started at the same time. */
final class Session extends RequestUnderTest<ArrivalTimesRequest, ArrivalTimesResult> {

  final List<RecordedChannel> channels = new ArrayList<>();
  final List<MicrophonePosition> microphones = new ArrayList<>();
  final List<Take> takes = new ArrayList<>();
  final List<LeftAndRight> pairs = new ArrayList<>();
  final ArrivalTimesRequestBuilder draft =
      ArrivalTimesRequestBuilder.builder()
          .kind(RecordedKind.IMPULSE_RESPONSE)
          .timeReference(TimeReference.COMMON_START)
          .channels(channels)
          .microphones(microphones)
          .recordings(takes)
          .pairs(pairs);

  Session() {
    super(new ArrivalTimes());
  }

  /** A session of one channel "a" at one microphone "m" so far without a recording. */
  static Session plain() {
    return new Session().channel("a").microphone("m", null);
  }

  Session microphone(String id, Double weight) {
    microphones.add(new MicrophonePosition(id, weight));
    return this;
  }

  Session channel(String id) {
    channels.add(named(id).build());
    return this;
  }

  /** A channel to be described further. */
  static ArrivalTimesRequestRecordedChannelBuilder named(String id) {
    return ArrivalTimesRequestRecordedChannelBuilder.builder().id(id);
  }

  Session take(String channel, String microphone, float... samples) {
    takes.add(new Take(channel, microphone, Recording.of(MadeUpRoom.RATE_HZ, samples), null));
    return this;
  }

  /** The recordings are of a sweep that starts so long after them. */
  Session playing(double fromHz, double toHz, double seconds, Double leadInS) {
    draft.kind(RecordedKind.SWEEP).sweep(new PlayedSweep(fromHz, toHz, seconds, leadInS));
    return this;
  }

  @Override
  public ArrivalTimesRequest request() {
    return draft.build();
  }
}
