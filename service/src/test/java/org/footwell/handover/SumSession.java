package org.footwell.handover;

import java.util.ArrayList;
import java.util.List;
import org.footwell.Answers;
import org.footwell.calculation.Answer;
import org.footwell.handover.LoudspeakerSumRequest.Channel;
import org.footwell.measurement.ChannelTake;
import org.footwell.measurement.Gate;
import org.footwell.measurement.MadeUpResponse;
import org.footwell.measurement.MicrophonePosition;
import org.footwell.measurement.PlayedSweep;
import org.footwell.measurement.RecordedKind;
import org.footwell.recording.Recording;

/** A request in the making: channels "low" and "high". */
final class SumSession {

  static final LoudspeakerSum CALCULATION = new LoudspeakerSum();

  PlayedSweep sweep;
  final List<MicrophonePosition> microphones = new ArrayList<>();
  final List<ChannelTake> takes = new ArrayList<>();
  double crossoverHz = 1500;
  Double delayRangeMs;
  Gate gate;

  SumSession position(MadeUpResponse low, MadeUpResponse high) {
    String id = "m" + microphones.size();
    microphones.add(new MicrophonePosition(id, null));
    takes.add(new ChannelTake("low", id, Recording.of(48_000, low.samples())));
    takes.add(new ChannelTake("high", id, Recording.of(48_000, high.samples())));
    return this;
  }

  LoudspeakerSumRequest request() {
    return new LoudspeakerSumRequest(
        sweep == null ? RecordedKind.IMPULSE_RESPONSE : RecordedKind.SWEEP,
        sweep,
        List.of(new Channel("low"), new Channel("high")),
        microphones,
        takes,
        crossoverHz,
        null,
        delayRangeMs,
        gate);
  }

  Answer<LoudspeakerSumResult> answer() {
    return Answers.of(CALCULATION, request());
  }

  List<String> faults() {
    return Answers.faults(CALCULATION, request()).stream()
        .map(fault -> fault.pointer() + " " + fault.code())
        .toList();
  }
}
