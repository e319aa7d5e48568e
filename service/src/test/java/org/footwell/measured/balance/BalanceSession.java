package org.footwell.measured.balance;

import java.util.ArrayList;
import java.util.List;
import org.footwell.RequestUnderTest;
import org.footwell.measured.response.ChannelTake;
import org.footwell.measured.response.JudgedChannel;
import org.footwell.measured.response.LeftAndRight;
import org.footwell.measured.response.MadeUpResponse;
import org.footwell.measured.response.MicrophonePosition;
import org.footwell.measured.response.PlayedSweep;
import org.footwell.measured.response.RecordedKind;
import org.footwell.recording.Recording;

/** A measuring session: channels heard at microphones. */
final class BalanceSession extends RequestUnderTest<LevelAndBalanceRequest, LevelAndBalanceResult> {

  final List<JudgedChannel> channels = new ArrayList<>();
  final List<MicrophonePosition> microphones = new ArrayList<>();
  final List<ChannelTake> takes = new ArrayList<>();
  final List<LeftAndRight> pairs = new ArrayList<>();
  final LevelAndBalanceRequestBuilder draft =
      LevelAndBalanceRequestBuilder.builder()
          .kind(RecordedKind.IMPULSE_RESPONSE)
          .channels(channels)
          .microphones(microphones)
          .recordings(takes)
          .pairs(pairs);

  BalanceSession() {
    super(new LevelAndBalance());
  }

  BalanceSession microphone(String id, Double weight) {
    microphones.add(new MicrophonePosition(id, weight));
    return this;
  }

  BalanceSession channel(String id, Double from, Double to, MadeUpResponse... heard) {
    channels.add(new JudgedChannel(id, from, to));
    for (int m = 0; m < heard.length; m++) {
      Recording recording = Recording.of(MadeUpResponse.RATE_HZ, heard[m].samples());
      takes.add(new ChannelTake(id, microphones.get(m).id(), recording));
    }
    return this;
  }

  /** The recordings are of a sweep. */
  BalanceSession playing(double fromHz, double toHz, double seconds) {
    draft.kind(RecordedKind.SWEEP).sweep(new PlayedSweep(fromHz, toHz, seconds, null));
    return this;
  }

  @Override
  public LevelAndBalanceRequest request() {
    return draft.build();
  }
}
