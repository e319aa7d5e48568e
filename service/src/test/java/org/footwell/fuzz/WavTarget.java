package org.footwell.fuzz;

import static org.footwell.fuzz.Refusals.require;
import static org.footwell.fuzz.Refusals.requireEqual;

import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.footwell.calculation.Series;
import org.footwell.recording.Wav;
import org.footwell.recording.WavBytes;
import org.footwell.recording.WavBytes.Kind;
import org.footwell.recording.WavReader;

/** WAV files: portions do not matter, memory grows with what comes, and what is read can be written. */
final class WavTarget implements Target {

  private static final int[] PORTIONS = {1, 7, 64};

  /** Where a file begins to have samples: 4,096 of each of 64 channels. */
  private static final long HELD_FROM_THE_START = 64L * 4096 * Float.BYTES;

  private record Read(Wav wav, String refusal) {

    /** Sample by sample, by their bits. */
    List<Object> inside() {
      List<Object> inside = new ArrayList<>(Arrays.asList(refusal));
      if (wav != null) {
        inside.add(wav.rateHz());
        wav.channels().forEach(channel -> inside.add(Arrays.toString(samples(channel))));
      }
      return inside;
    }
  }

  @Override
  public void read(byte[] given) throws Exception {
    Read whole = read(given, Math.max(1, given.length));
    for (int portion : PORTIONS) {
      requireEqual(whole.inside(), read(given, portion).inside(), "in portions of " + portion);
    }
    if (whole.wav() != null) {
      float[][] channels =
          whole.wav().channels().stream().map(WavTarget::samples).toArray(float[][]::new);
      byte[] written = WavBytes.of(Kind.FLOAT32, (int) whole.wav().rateHz(), channels);
      requireEqual(
          whole.inside(), read(written, written.length).inside(), "written and read again");
    }
  }

  private static Read read(byte[] given, int portion) {
    WavReader reader = new WavReader();
    for (int at = 0; at < given.length; at += portion) {
      reader.accept(ByteBuffer.wrap(given, at, Math.min(portion, given.length - at)));
      require(
          reader.heldBytes() <= HELD_FROM_THE_START + 4L * given.length,
          "memory grows with what comes, not with what a file states");
      require(reader.statedSamples() >= 0, "no negative length");
    }
    try {
      return new Read(reader.finish(), null);
    } catch (Wav.Unreadable unreadable) {
      return new Read(null, unreadable.fault() + ": " + unreadable.given());
    }
  }

  private static float[] samples(Series series) {
    float[] samples = new float[series.size()];
    for (int n = 0; n < samples.length; n++) {
      samples[n] = series.at(n);
    }
    return samples;
  }

  @Override
  public List<byte[]> seeds() {
    float[] samples = {0, 0.5f, -1, 0.25f};
    List<byte[]> seeds = new ArrayList<>();
    for (Kind kind : Kind.values()) {
      seeds.add(WavBytes.of(kind, 48_000, samples));
      seeds.add(WavBytes.of(kind, 96_000, samples, samples));
      seeds.add(WavBytes.extensible(kind, 44_100, samples));
    }
    return seeds;
  }
}
