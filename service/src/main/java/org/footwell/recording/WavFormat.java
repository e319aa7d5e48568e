package org.footwell.recording;

import java.nio.ByteBuffer;
import java.util.Map;
import org.footwell.calculation.text.Phrase;

/**
 * What the {@code fmt} chunk of a WAV file says, as far as it is supported.
 *
 * @param floats whether samples are floating point
 * @param bits bits of a sample: 16, 24 or 32
 */
record WavFormat(boolean floats, int bits, int channels, double rateHz) {

  static final int SHORTEST = 16;
  static final int LONGEST = 40;

  private static final int INTEGERS = 1;
  private static final int FLOATS = 3;
  private static final int EXTENSIBLE = 0xFFFE;

  /** Where the extensible form holds the tag of the plain one. */
  private static final int SUBFORMAT_AT = 24;

  private static final Map<Integer, String> OTHERS =
      Map.of(2, "ADPCM", 6, "A-law", 7, "mu-law", 0x55, "MP3", 0xFF, "AAC");

  static final double LOWEST_RATE_HZ = 44_100;
  static final double HIGHEST_RATE_HZ = 192_000;
  static final int MOST_CHANNELS = 64;

  /** Reads the chunk's little-endian content. */
  static WavFormat read(ByteBuffer chunk) throws Wav.Unreadable {
    int tag = chunk.getShort(0) & 0xFFFF;
    if (tag == EXTENSIBLE && chunk.limit() >= LONGEST) {
      tag = chunk.getShort(SUBFORMAT_AT) & 0xFFFF;
    }
    int channels = chunk.getShort(2) & 0xFFFF;
    double rate = chunk.getInt(4) & 0xFFFFFFFFL;
    int frame = chunk.getShort(12) & 0xFFFF;
    int bits = chunk.getShort(14) & 0xFFFF;
    if (tag != INTEGERS && tag != FLOATS) {
      throw unsupported(
          OTHERS.containsKey(tag)
              ? Phrase.of(RecordingWords.FORMAT).own("name", OTHERS.get(tag))
              : Phrase.of(RecordingWords.FORMAT_TAG).with("tag", tag));
    }
    boolean known = tag == FLOATS ? bits == 32 : bits == 16 || bits == 24 || bits == 32;
    if (!known) {
      throw unsupported(
          (tag == FLOATS ? RecordingWords.FLOAT_BITS : RecordingWords.INTEGER_BITS).of(bits));
    }
    if (channels < 1 || channels > MOST_CHANNELS) {
      throw unsupported(RecordingWords.CHANNELS.of(channels));
    }
    if (rate < LOWEST_RATE_HZ || rate > HIGHEST_RATE_HZ) {
      throw unsupported(Phrase.of(RecordingWords.RATE).own("rate", Long.toString((long) rate)));
    }
    if (frame != channels * bits / 8) {
      throw unsupported(RecordingWords.FRAME.of(frame));
    }
    return new WavFormat(tag == FLOATS, bits, channels, rate);
  }

  /** What files are read. */
  static Phrase readable() {
    return Phrase.of(RecordingWords.READABLE)
        .own("least", Long.toString((long) LOWEST_RATE_HZ))
        .own("most", Long.toString((long) HIGHEST_RATE_HZ))
        .with("channels", MOST_CHANNELS)
        .with("samples", RecordingRules.MOST_SAMPLES);
  }

  private static Wav.Unreadable unsupported(Phrase what) {
    return new Wav.Unreadable(RecordingFault.WAV_FORMAT_UNSUPPORTED, what);
  }

  int frameBytes() {
    return channels * bits / 8;
  }

  /** The next sample; full scale is 1. */
  float next(ByteBuffer data) {
    if (floats) {
      return data.getFloat();
    }
    return switch (bits) {
      case 16 -> data.getShort() / 0x1p15f;
      case 24 -> {
        int low = data.getShort() & 0xFFFF;
        yield (data.get() << 16 | low) / 0x1p23f;
      }
      default -> data.getInt() / 0x1p31f;
    };
  }
}
