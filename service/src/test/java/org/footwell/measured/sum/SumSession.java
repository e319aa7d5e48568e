package org.footwell.measured.sum;

import java.util.ArrayList;
import java.util.List;
import org.footwell.RequestUnderTest;
import org.footwell.measured.response.ChannelTake;
import org.footwell.measured.response.MadeUpResponse;
import org.footwell.measured.response.MicrophonePosition;
import org.footwell.measured.response.RecordedKind;
import org.footwell.measured.sum.LoudspeakerSumRequest.SummedChannel;
import org.footwell.parts.Filter;
import org.footwell.physics.AnalogFilter;
import org.footwell.recording.Recording;
import org.footwell.signal.Biquad;
import org.footwell.signal.SectionDesign;

/** A measuring session: channels "low" and "high", handing over at 1500 Hz. */
final class SumSession extends RequestUnderTest<LoudspeakerSumRequest, LoudspeakerSumResult> {

  final List<MicrophonePosition> microphones = new ArrayList<>();
  final List<ChannelTake> takes = new ArrayList<>();
  final LoudspeakerSumRequestBuilder draft =
      LoudspeakerSumRequestBuilder.builder()
          .kind(RecordedKind.IMPULSE_RESPONSE)
          .channels(List.of(new SummedChannel("low"), new SummedChannel("high")))
          .microphones(microphones)
          .recordings(takes)
          .crossoverHz(1500.0);

  SumSession() {
    super(new LoudspeakerSum());
  }

  /** A click through one way of a Linkwitz-Riley crossover. */
  static MadeUpResponse linkwitzRiley(
      boolean upper, int order, double frequencyHz, int at, double height) {
    Filter filter = new Filter(Filter.Kind.LINKWITZ_RILEY, order, frequencyHz, null);
    MadeUpResponse through = MadeUpResponse.click(12_000, at, height);
    AnalogFilter analog = upper ? filter.highPass() : filter.lowPass();
    for (Biquad b : SectionDesign.of(analog, MadeUpResponse.RATE_HZ)) {
      through = through.through(b.b0(), b.b1(), b.b2(), 1, b.a1(), b.a2());
    }
    return through;
  }

  SumSession position(MadeUpResponse low, MadeUpResponse high) {
    String id = "m" + microphones.size();
    microphones.add(new MicrophonePosition(id, null));
    takes.add(new ChannelTake("low", id, Recording.of(48_000, low.samples())));
    takes.add(new ChannelTake("high", id, Recording.of(48_000, high.samples())));
    return this;
  }

  @Override
  public LoudspeakerSumRequest request() {
    return draft.build();
  }
}
