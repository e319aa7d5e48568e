package org.footwell.recording;

import static org.footwell.recording.RecordingFault.RECORDINGS_TOO_LONG;
import static org.footwell.recording.RecordingFault.RECORDING_CLIPPED;
import static org.footwell.recording.RecordingFault.RECORDING_SILENT;
import static org.footwell.recording.RecordingFault.RECORDING_TOO_LONG;
import static org.footwell.recording.RecordingFault.RECORDING_TOO_SHORT;
import static org.footwell.recording.RecordingFault.SAMPLE_OUT_OF_RANGE;
import static org.footwell.recording.RecordingFault.SAMPLE_RATES_MIXED;
import static org.footwell.recording.RecordingFault.WAV_NOT_UPLOADED;

import org.footwell.calculation.Refusing;
import org.footwell.calculation.Series;
import org.footwell.calculation.text.Allowed;
import org.footwell.calculation.text.Phrase;

/** The rules for the recordings of one request; every breach is refused. */
public final class RecordingRules {

  /** Fewest samples of a recording. */
  public static final int FEWEST_SAMPLES = 64;

  /** Most samples of a recording: 10 s at 192 kHz, 43 s at 48 kHz. */
  public static final int MOST_SAMPLES = 1 << 21;

  /** Most samples of all recordings of a request: twice 8 channels by 6 microphones, 2.6 s each. */
  public static final int MOST_SAMPLES_IN_ALL = 12_000_000;

  /** Largest sample: arrays need not be scaled to full scale, but more is no recording. */
  static final float LARGEST = 1000;

  /** From here on a sample counts as at full scale: the last step but one of 16 bits. */
  static final float FULL_SCALE = 32766f / 32768;

  /** As many equal samples in a row at full scale are clipping. */
  static final int CLIPPED_ROW = 4;

  /** Quieter than the last step of 24 bits all along is silence. */
  static final float SILENCE = 1f / (1 << 23);

  private final Refusing to;
  private double rateHz;
  private String firstAt;
  private long samplesInAll;

  public RecordingRules(Refusing to) {
    this.to = to;
  }

  /**
   * Checks one recording by itself and against those before.
   *
   * @param at JSON Pointer to the recording
   * @return whether it can be used
   */
  public boolean check(Recording recording, String at) {
    if (recording.wav() != null) {
      to.refuse(WAV_NOT_UPLOADED).at(at + "/wav").given(recording.wav());
      return false;
    }
    if (recording.rateHz() == null || recording.samples() == null) {
      return false; // told by the rules of a recording
    }
    boolean sameRate = rate(recording.rateHz(), at);
    boolean fits = size(recording.samples(), at);
    return sameRate && fits && levels(recording, at);
  }

  private boolean rate(double rate, String at) {
    if (firstAt == null) {
      firstAt = at;
      rateHz = rate;
    }
    if (rate != rateHz) {
      to.refuse(SAMPLE_RATES_MIXED)
          .at(at)
          .given(rate + " Hz")
          .allowed(
              Phrase.of(RecordingWords.RATE_OF_FIRST)
                  .own("rate", Double.toString(rateHz))
                  .field("first", firstAt.substring(1).replace('/', '.')));
      return false;
    }
    return true;
  }

  private boolean size(Series samples, String at) {
    int size = samples.size();
    if (size < FEWEST_SAMPLES) {
      to.refuse(RECORDING_TOO_SHORT)
          .at(at)
          .given(RecordingWords.SAMPLES.of(size))
          .allowed(RecordingWords.AT_LEAST_SAMPLES.of(FEWEST_SAMPLES));
      return false;
    }
    if (size > MOST_SAMPLES) {
      to.refuse(RECORDING_TOO_LONG)
          .at(at)
          .given(RecordingWords.SAMPLES.of(size))
          .allowed(RecordingWords.AT_MOST_SAMPLES.of(MOST_SAMPLES));
      return false;
    }
    long before = samplesInAll;
    samplesInAll += size;
    if (samplesInAll > MOST_SAMPLES_IN_ALL) {
      if (before <= MOST_SAMPLES_IN_ALL) {
        to.refuse(RECORDINGS_TOO_LONG)
            .at(at)
            .given(RecordingWords.SAMPLES_SO_FAR.of((int) samplesInAll))
            .allowed(RecordingWords.AT_MOST_SAMPLES.of(MOST_SAMPLES_IN_ALL));
      }
      return false;
    }
    return true;
  }

  private boolean levels(Recording recording, String at) {
    Series samples = recording.samples();
    float peak = 0;
    int row = 1;
    boolean clipped = false;
    for (int i = 0; i < samples.size(); i++) {
      float size = Math.abs(samples.at(i));
      if (!(size <= LARGEST)) {
        to.refuse(SAMPLE_OUT_OF_RANGE)
            .at(at)
            .given(samples.at(i))
            .allowed(Allowed.between(-LARGEST, LARGEST, ""))
            .with("index", i);
        return false;
      }
      peak = Math.max(peak, size);
      row = i > 0 && samples.at(i) == samples.at(i - 1) ? row + 1 : 1;
      clipped |= row == CLIPPED_ROW && size >= FULL_SCALE && size <= 1;
    }
    if (peak < SILENCE) {
      to.refuse(RECORDING_SILENT).at(at);
    } else if (clipped) {
      to.refuse(RECORDING_CLIPPED).at(at);
    }
    return peak >= SILENCE && !clipped;
  }
}
