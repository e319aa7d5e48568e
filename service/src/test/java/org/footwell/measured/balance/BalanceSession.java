package org.footwell.measured.balance;

import java.util.ArrayList;
import java.util.List;
import org.footwell.Answers;
import org.footwell.calculation.Answer;
import org.footwell.measured.balance.LevelAndBalanceRequest.Channel;
import org.footwell.measured.response.ChannelTake;
import org.footwell.measured.response.Gate;
import org.footwell.measured.response.LeftAndRight;
import org.footwell.measured.response.MadeUpResponse;
import org.footwell.measured.response.MicrophonePosition;
import org.footwell.measured.response.PlayedSweep;
import org.footwell.measured.response.RecordedKind;
import org.footwell.parts.LevelAt;
import org.footwell.parts.TargetCurve;
import org.footwell.recording.Recording;

/** A request in the making. */
final class BalanceSession {

  static final LevelAndBalance CALCULATION = new LevelAndBalance();

  PlayedSweep sweep;
  final List<Channel> channels = new ArrayList<>();
  final List<MicrophonePosition> microphones = new ArrayList<>();
  final List<ChannelTake> takes = new ArrayList<>();
  final List<LeftAndRight> pairs = new ArrayList<>();
  TargetCurve target;
  Gate gate;
  List<LevelAt> calibration;
  Double fromHz;
  Double toHz;

  BalanceSession microphone(String id, Double weight) {
    microphones.add(new MicrophonePosition(id, weight));
    return this;
  }

  BalanceSession channel(String id, Double from, Double to, MadeUpResponse... heard) {
    channels.add(new Channel(id, from, to));
    for (int m = 0; m < heard.length; m++) {
      Recording recording = Recording.of(MadeUpResponse.RATE_HZ, heard[m].samples());
      takes.add(new ChannelTake(id, microphones.get(m).id(), recording));
    }
    return this;
  }

  LevelAndBalanceRequest request() {
    return LevelAndBalanceRequestBuilder.builder()
        .kind(sweep == null ? RecordedKind.IMPULSE_RESPONSE : RecordedKind.SWEEP)
        .sweep(sweep)
        .channels(channels)
        .microphones(microphones)
        .recordings(takes)
        .pairs(pairs)
        .target(target)
        .gate(gate)
        .calibration(calibration)
        .fromHz(fromHz)
        .toHz(toHz)
        .build();
  }

  Answer<LevelAndBalanceResult> answer() {
    return Answers.of(CALCULATION, request());
  }

  List<String> faults() {
    return Answers.faults(CALCULATION, request()).stream()
        .map(fault -> fault.pointer() + " " + fault.code())
        .toList();
  }
}
