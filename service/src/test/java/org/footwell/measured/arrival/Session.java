package org.footwell.measured.arrival;

import java.util.ArrayList;
import java.util.List;
import org.footwell.Answers;
import org.footwell.calculation.Answer;
import org.footwell.calculation.Fault;
import org.footwell.measured.arrival.ArrivalTimesRequest.Channel;
import org.footwell.measured.arrival.ArrivalTimesRequest.Processor;
import org.footwell.measured.arrival.ArrivalTimesRequest.Take;
import org.footwell.measured.arrival.ArrivalTimesRequest.TimeReference;
import org.footwell.measured.response.LeftAndRight;
import org.footwell.measured.response.MicrophonePosition;
import org.footwell.measured.response.PlayedSweep;
import org.footwell.measured.response.RecordedKind;
import org.footwell.recording.Recording;

/** A request in the making. */
final class Session {

  static final ArrivalTimes CALCULATION = new ArrivalTimes();

  RecordedKind kind = RecordedKind.IMPULSE_RESPONSE;
  PlayedSweep sweep;
  TimeReference timeReference = TimeReference.COMMON_START;
  final List<Channel> channels = new ArrayList<>();
  final List<MicrophonePosition> microphones = new ArrayList<>();
  final List<Take> takes = new ArrayList<>();
  Processor processor;
  Double temperatureC;
  final List<LeftAndRight> pairs = new ArrayList<>();
  Double cabinLengthM;

  /** A session of one channel "a" at one microphone "m" so far without a recording. */
  static Session plain() {
    Session session = new Session();
    session.channel("a");
    session.microphones.add(new MicrophonePosition("m", null));
    return session;
  }

  Session channel(String id) {
    channels.add(new Channel(id, null, null, null, null));
    return this;
  }

  Session take(String channel, String microphone, float... samples) {
    takes.add(new Take(channel, microphone, Recording.of(MadeUpRoom.RATE_HZ, samples), null));
    return this;
  }

  ArrivalTimesRequest request() {
    return ArrivalTimesRequestBuilder.builder()
        .kind(kind)
        .sweep(sweep)
        .timeReference(timeReference)
        .channels(channels)
        .microphones(microphones)
        .recordings(takes)
        .processor(processor)
        .temperatureC(temperatureC)
        .pairs(pairs)
        .cabinLengthM(cabinLengthM)
        .build();
  }

  Answer<ArrivalTimesResult> answer() {
    return Answers.of(CALCULATION, request());
  }

  /** Every fault as its pointer and code. */
  List<String> faults() {
    return Answers.faults(CALCULATION, request()).stream()
        .map((Fault fault) -> fault.pointer() + " " + fault.code())
        .toList();
  }
}
