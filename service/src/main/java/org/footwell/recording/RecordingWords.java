package org.footwell.recording;

import org.footwell.calculation.text.Phrase;
import org.footwell.calculation.text.Words;

/** Words in the sentences about recordings. */
public enum RecordingWords implements Words {
  SAMPLES,
  SAMPLES_SO_FAR,
  MORE_SAMPLES_THAN,
  AT_LEAST_SAMPLES,
  AT_MOST_SAMPLES,
  RATE_OF_FIRST,
  AN_RF64_FILE,
  OTHER_DATA,
  FORMAT_CHUNK,
  SAMPLES_BEFORE_FORMAT,
  NO_SAMPLES,
  FEWER_BYTES,
  FORMAT,
  FORMAT_TAG,
  INTEGER_BITS,
  FLOAT_BITS,
  CHANNELS,
  RATE,
  FRAME,
  ONLY_CHANNEL,
  CHANNELS_UP_TO,
  CHANNEL_OF_SEVERAL,
  READABLE;

  /** So many samples, as one of these says. */
  public Phrase of(int samples) {
    return Phrase.of(this).with("count", samples);
  }
}
