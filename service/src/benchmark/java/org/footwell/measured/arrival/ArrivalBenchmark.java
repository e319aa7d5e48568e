package org.footwell.measured.arrival;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.footwell.measured.arrival.ArrivalTimesRequest.RecordedChannel;
import org.footwell.measured.response.RecordedKind;
import org.footwell.measured.response.MicrophonePosition;
import org.footwell.measured.arrival.ArrivalTimesRequest.Take;
import org.footwell.measured.arrival.ArrivalTimesRequest.TimeReference;
import org.footwell.calculation.Engine;
import org.footwell.recording.Recording;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Eight channels at six microphone positions, each a response of 1 s at 48 kHz. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 5)
@Measurement(iterations = 5, time = 5)
@Fork(value = 1, jvmArgs = "-Xmx256m")
public class ArrivalBenchmark {

  private static final int RATE_HZ = 48_000;

  private final Engine engine = new Engine();
  private final ArrivalTimesRequest request = request();

  private static ArrivalTimesRequest request() {
    List<RecordedChannel> channels = new ArrayList<>();
    List<MicrophonePosition> microphones = new ArrayList<>();
    List<Take> takes = new ArrayList<>();
    for (int c = 0; c < 8; c++) {
      channels.add(new RecordedChannel("channel " + c, null, null, null, null));
      for (int m = 0; m < 6; m++) {
        if (c == 0) {
          microphones.add(new MicrophonePosition("microphone " + m, null));
        }
        Recording recording = Recording.of(RATE_HZ, response(c, m));
        takes.add(new Take("channel " + c, "microphone " + m, recording, null));
      }
    }
    return ArrivalTimesRequestBuilder.builder().kind(RecordedKind.IMPULSE_RESPONSE).timeReference(TimeReference.COMMON_START).channels(channels).microphones(microphones).recordings(takes).build();
  }

  /** A decaying pulse, slower for the first channels, in noise 60 dB below it. */
  private static float[] response(int channel, int microphone) {
    Random random = new Random(10L * channel + microphone);
    float[] response = new float[RATE_HZ];
    double slow = channel == 0 ? 0.01 : channel < 3 ? 0.1 : 0.5;
    int start = 150 + 40 * channel + 10 * microphone;
    for (int n = 0; n < response.length; n++) {
      double pulse = n < start ? 0 : Math.exp(-slow * (n - start)) * Math.cos(slow * (n - start));
      response[n] = (float) (0.7 * pulse + 0.0007 * random.nextGaussian());
    }
    return response;
  }

  /** All arrivals, polarities and delays. */
  @Benchmark
  public Object sixMicrophonesByEightChannels() {
    return engine.answer(new ArrivalTimes(), request, false, Duration.ofSeconds(60));
  }
}
