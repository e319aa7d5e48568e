package org.footwell.recording;

import static org.footwell.recording.RecordingFault.NOT_A_WAV_FILE;
import static org.footwell.recording.RecordingFault.RECORDING_TOO_LONG;
import static org.footwell.recording.RecordingFault.WAV_TRUNCATED;
import static org.footwell.recording.RecordingFault.WAV_WITHOUT_SAMPLES;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.footwell.calculation.Series;
import org.footwell.calculation.text.Phrase;

/**
 * Reads a WAV file from its bytes as they come, in any portions, and holds only the samples. Trusts
 * no length the file states: memory grows with what really comes.
 */
public final class WavReader {

  private static final int CHUNK_HEADER = 8;
  private static final int RIFF_HEADER = 12;

  /** Where a stream is written before its length is known, this stands for it. */
  private static final long UNKNOWN_LENGTH = 0xFFFFFFFFL;

  private enum State {
    RIFF,
    CHUNK,
    FORMAT,
    DATA,
    SKIP,
    DONE
  }

  /** What of the current header, format or frame has come so far. */
  private final ByteBuffer pending =
      ByteBuffer.allocate(WavFormat.MOST_CHANNELS * 4).order(ByteOrder.LITTLE_ENDIAN);

  private State state = State.RIFF;
  private int wanted = RIFF_HEADER;
  private long left;
  private WavFormat format;
  private Row[] rows;
  private Wav.Unreadable failure;

  /** Samples of one channel, growing by what comes, but not beyond what the file states. */
  private static final class Row {
    private final long stated;
    private float[] values = new float[4096];
    private int size;

    Row(long stated) {
      this.stated = stated;
    }

    void add(float value) {
      if (size == values.length) {
        values = Arrays.copyOf(values, (int) Math.min(stated, size + size / 2));
      }
      values[size++] = value;
    }

    Series series() {
      return Series.of(size == values.length ? values : Arrays.copyOf(values, size));
    }
  }

  /** Takes the next bytes. After a failure the rest is passed over. */
  public void accept(ByteBuffer given) {
    ByteBuffer bytes = given.order(ByteOrder.LITTLE_ENDIAN);
    while (bytes.hasRemaining() && failure == null && state != State.DONE) {
      try {
        step(bytes);
      } catch (Wav.Unreadable unreadable) {
        failure = unreadable;
        rows = null;
      }
    }
  }

  private void step(ByteBuffer bytes) throws Wav.Unreadable {
    switch (state) {
      case RIFF -> {
        if (fill(bytes)) {
          riff();
        }
      }
      case CHUNK -> {
        if (fill(bytes)) {
          chunk();
        }
      }
      case FORMAT -> {
        if (fill(bytes)) {
          format = WavFormat.read(pending.flip());
          skip();
        }
      }
      case DATA -> data(bytes);
      default -> {
        int n = (int) Math.min(left, bytes.remaining());
        bytes.position(bytes.position() + n);
        left -= n;
        if (left == 0) {
          expect(State.CHUNK, CHUNK_HEADER);
        }
      }
    }
  }

  /** Moves bytes to what is pending until as many are there as wanted. */
  private boolean fill(ByteBuffer bytes) {
    int n = Math.min(wanted - pending.position(), bytes.remaining());
    ByteBuffer part = bytes.slice(bytes.position(), n);
    bytes.position(bytes.position() + n);
    pending.put(part);
    return pending.position() == wanted;
  }

  private void expect(State next, int bytes) {
    pending.clear();
    state = next;
    wanted = bytes;
  }

  private void riff() throws Wav.Unreadable {
    String start = text(0);
    if (!start.equals("RIFF") || !text(8).equals("WAVE")) {
      throw new Wav.Unreadable(
          NOT_A_WAV_FILE,
          Phrase.of(
              start.equals("RF64") ? RecordingWords.AN_RF64_FILE : RecordingWords.OTHER_DATA));
    }
    expect(State.CHUNK, CHUNK_HEADER);
  }

  private String text(int at) {
    return new String(pending.array(), at, 4, StandardCharsets.ISO_8859_1);
  }

  private void chunk() throws Wav.Unreadable {
    String name = text(0);
    long length = pending.getInt(4) & 0xFFFFFFFFL;
    left = length + (length & 1);
    if (name.equals("fmt ")) {
      if (length < WavFormat.SHORTEST) {
        throw new Wav.Unreadable(
            NOT_A_WAV_FILE,
            Phrase.of(RecordingWords.FORMAT_CHUNK).own("count", Long.toString(length)));
      }
      int read = (int) Math.min(length, WavFormat.LONGEST);
      left -= read;
      expect(State.FORMAT, read);
    } else if (name.equals("data")) {
      if (format == null) {
        throw new Wav.Unreadable(NOT_A_WAV_FILE, Phrase.of(RecordingWords.SAMPLES_BEFORE_FORMAT));
      }
      left = length;
      rows = new Row[format.channels()];
      for (int c = 0; c < rows.length; c++) {
        rows[c] = new Row(length / format.frameBytes());
      }
      expect(length == 0 ? State.DONE : State.DATA, format.frameBytes());
    } else {
      skip();
    }
  }

  private void skip() {
    if (left == 0) {
      expect(State.CHUNK, CHUNK_HEADER);
    } else {
      state = State.SKIP;
    }
  }

  private void data(ByteBuffer bytes) throws Wav.Unreadable {
    int frame = format.frameBytes();
    while (bytes.hasRemaining() && left >= frame) {
      if (pending.position() == 0 && bytes.remaining() >= frame) {
        frame(bytes);
      } else if (fill(bytes)) {
        frame(pending.flip());
        pending.clear();
      } else {
        return;
      }
      if (left != UNKNOWN_LENGTH) {
        left -= frame;
      }
    }
    if (left < frame) {
      state = State.DONE;
    }
  }

  private void frame(ByteBuffer bytes) throws Wav.Unreadable {
    if (rows[0].size == RecordingRules.MOST_SAMPLES) {
      throw new Wav.Unreadable(
          RECORDING_TOO_LONG, RecordingWords.MORE_SAMPLES_THAN.of(RecordingRules.MOST_SAMPLES));
    }
    for (Row row : rows) {
      row.add(format.next(bytes));
    }
  }

  /** Samples of a channel that the file says it holds; 0 where it says nothing, or not yet. */
  public long statedSamples() {
    return rows == null || left == UNKNOWN_LENGTH ? 0 : rows[0].stated;
  }

  /** Memory that the samples take so far, bytes. */
  public long heldBytes() {
    return rows == null ? 0 : (long) Float.BYTES * rows.length * rows[0].values.length;
  }

  /** Samples held so far, of all channels together. */
  public long samples() {
    return rows == null ? 0 : (long) rows.length * rows[0].size;
  }

  /**
   * The file, now that all bytes have come.
   *
   * @throws Wav.Unreadable if it cannot be used
   */
  public Wav finish() throws Wav.Unreadable {
    if (failure != null) {
      throw failure;
    }
    if (state == State.RIFF) {
      throw new Wav.Unreadable(NOT_A_WAV_FILE, Phrase.of(RecordingWords.OTHER_DATA));
    }
    boolean streamed = state == State.DATA && left == UNKNOWN_LENGTH && pending.position() == 0;
    if (state != State.DONE && !streamed) {
      throw rows == null
          ? new Wav.Unreadable(
              state == State.CHUNK && pending.position() == 0 ? WAV_WITHOUT_SAMPLES : WAV_TRUNCATED,
              Phrase.of(RecordingWords.NO_SAMPLES))
          : new Wav.Unreadable(
              WAV_TRUNCATED,
              Phrase.of(RecordingWords.FEWER_BYTES).own("count", Long.toString(left)));
    }
    if (rows[0].size == 0) {
      throw new Wav.Unreadable(WAV_WITHOUT_SAMPLES, Phrase.of(RecordingWords.NO_SAMPLES));
    }
    List<Series> channels = new ArrayList<>();
    for (Row row : rows) {
      channels.add(row.series());
    }
    return new Wav(format.rateHz(), channels);
  }
}
