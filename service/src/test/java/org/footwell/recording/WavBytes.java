package org.footwell.recording;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;

/** WAV files for tests, written by the book and not by what is tested. */
public final class WavBytes {

  /** Kinds of sample. */
  public enum Kind {
    INT16(1, 16),
    INT24(1, 24),
    INT32(1, 32),
    FLOAT32(3, 32);

    final int tag;
    final int bits;

    Kind(int tag, int bits) {
      this.tag = tag;
      this.bits = bits;
    }
  }

  private WavBytes() {}

  /** A file of channels of equal length; full scale is 1. */
  public static byte[] of(Kind kind, int rateHz, float[]... channels) {
    return of(kind, rateHz, false, channels);
  }

  /** The same with the extensible format, and a chunk of odd length before the samples. */
  public static byte[] extensible(Kind kind, int rateHz, float[]... channels) {
    return of(kind, rateHz, true, channels);
  }

  private static byte[] of(Kind kind, int rateHz, boolean extensible, float[]... channels) {
    int frame = channels.length * kind.bits / 8;
    int data = frame * channels[0].length;
    int format = extensible ? 40 : 16;
    int odd = extensible ? 12 : 0;
    ByteBuffer out =
        ByteBuffer.allocate(12 + 8 + format + odd + 8 + data).order(ByteOrder.LITTLE_ENDIAN);
    text(out, "RIFF").putInt(out.capacity() - 8);
    text(out, "WAVE");
    text(out, "fmt ").putInt(format);
    out.putShort((short) (extensible ? 0xFFFE : kind.tag));
    out.putShort((short) channels.length).putInt(rateHz).putInt(rateHz * frame);
    out.putShort((short) frame).putShort((short) kind.bits);
    if (extensible) {
      out.putShort((short) 22).putShort((short) kind.bits).putInt(0).putShort((short) kind.tag);
      out.put(new byte[14]);
      text(out, "note").putInt(3).put(new byte[4]);
    }
    text(out, "data").putInt(data);
    for (int n = 0; n < channels[0].length; n++) {
      for (float[] channel : channels) {
        put(out, kind, channel[n]);
      }
    }
    return out.array();
  }

  private static ByteBuffer text(ByteBuffer out, String four) {
    return out.put(four.getBytes(StandardCharsets.US_ASCII));
  }

  private static void put(ByteBuffer out, Kind kind, float value) {
    if (kind == Kind.FLOAT32) {
      out.putFloat(value);
      return;
    }
    long most = (1L << (kind.bits - 1)) - 1;
    long whole = Math.max(-most - 1, Math.min(most, Math.round(value * (double) (most + 1))));
    for (int shift = 0; shift < kind.bits; shift += 8) {
      out.put((byte) (whole >> shift));
    }
  }
}
