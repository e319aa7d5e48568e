package org.footwell.recording;

import java.util.List;
import org.footwell.calculation.Series;
import org.footwell.calculation.Source;
import org.footwell.calculation.text.Phrase;

/**
 * A WAV file that was read.
 *
 * @param rateHz sample rate, Hz
 * @param channels samples by channel; full scale is 1
 */
public record Wav(double rateHz, List<Series> channels) {

  public static final Source RIFF =
      Source.of(
          "IBM and Microsoft, Multimedia Programming Interface and Data Specifications 1.0 (1991):"
              + " RIFF WAVE; extensible format tag by Microsoft; from memory, not checked against a"
              + " copy");

  /** What files are read. */
  public static Phrase readable() {
    return WavFormat.readable();
  }

  /** Why a file cannot be read as a WAV file of a supported kind. */
  public static final class Unreadable extends Exception {
    private static final long serialVersionUID = 1L;

    private final RecordingFault fault;
    private final transient Phrase given;

    Unreadable(RecordingFault fault, Phrase given) {
      super(fault.code(), null, false, false);
      this.fault = fault;
      this.given = given;
    }

    public RecordingFault fault() {
      return fault;
    }

    /** What the file holds instead. */
    public Phrase given() {
      return given;
    }
  }
}
