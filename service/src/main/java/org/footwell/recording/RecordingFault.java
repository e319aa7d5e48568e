package org.footwell.recording;

import org.footwell.calculation.FaultCode;

/** Why a recording cannot be used. */
public enum RecordingFault implements FaultCode {
  NOT_A_WAV_FILE,
  WAV_FORMAT_UNSUPPORTED,
  WAV_TRUNCATED,
  WAV_WITHOUT_SAMPLES,
  NO_SUCH_WAV_CHANNEL,
  WAV_NOT_UPLOADED,
  WAV_WITH_RATE_OR_SAMPLES,
  UPLOAD_NOT_USED,
  RECORDING_TOO_SHORT,
  RECORDING_TOO_LONG,
  RECORDINGS_TOO_LONG,
  SAMPLE_OUT_OF_RANGE,
  RECORDING_SILENT,
  RECORDING_CLIPPED,
  SAMPLE_RATES_MIXED
}
