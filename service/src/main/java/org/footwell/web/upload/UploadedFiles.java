package org.footwell.web.upload;

import static org.footwell.recording.RecordingFault.NO_SUCH_WAV_CHANNEL;
import static org.footwell.recording.RecordingFault.RECORDING_TOO_LONG;
import static org.footwell.recording.RecordingFault.UPLOAD_NOT_USED;
import static org.footwell.recording.RecordingFault.WAV_WITH_RATE_OR_SAMPLES;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.footwell.calculation.CoreFault;
import org.footwell.calculation.Faults;
import org.footwell.calculation.Refused;
import org.footwell.calculation.Remark;
import org.footwell.calculation.text.Phrase;
import org.footwell.recording.RecordingRules;
import org.footwell.recording.RecordingWords;
import org.footwell.recording.Wav;
import org.footwell.recording.WavReader;

/**
 * Puts the samples of uploaded files in place of their names: wherever an untyped request says
 * {@code "wav": "name"}, the calculation sees samples and a rate as if they had come in JSON.
 */
final class UploadedFiles {

  private static final String WAV = "wav";
  private static final String CHANNEL = "channel";
  private static final String SAMPLES = "samples";
  private static final String RATE = "rate_hz";

  private final Map<String, WavReader> files;
  private final Map<String, Wav> read = new HashMap<>();
  private final Set<String> used = new HashSet<>();
  private final Faults faults = new Faults();

  private UploadedFiles(Map<String, WavReader> files) {
    this.files = files;
  }

  /**
   * Changes the request in place.
   *
   * @throws Refused with every fault of the files
   */
  static void place(Object request, Map<String, WavReader> files) {
    UploadedFiles uploaded = new UploadedFiles(files);
    uploaded.walk(request, "");
    for (String name : files.keySet()) {
      if (!uploaded.used.contains(name)) {
        uploaded.faults.add(UPLOAD_NOT_USED).given(name);
      }
    }
    if (!uploaded.faults.none()) {
      throw new Refused(uploaded.faults);
    }
  }

  @SuppressWarnings("unchecked") // maps of the untyped reader have texts for keys
  private void walk(Object node, String pointer) {
    if (node instanceof List<?> list) {
      for (int i = 0; i < list.size(); i++) {
        walk(list.get(i), pointer + "/" + i);
      }
    } else if (node instanceof Map<?, ?> map) {
      Map<String, Object> fields = (Map<String, Object>) map;
      if (fields.get(WAV) instanceof String name && files.containsKey(name)) {
        place(name, fields, pointer);
      }
      fields.forEach((key, value) -> walk(value, pointer + "/" + key));
    }
  }

  private void place(String name, Map<String, Object> fields, String pointer) {
    used.add(name);
    for (String own : List.of(RATE, SAMPLES)) {
      if (fields.get(own) != null) {
        faults.add(WAV_WITH_RATE_OR_SAMPLES).at(pointer + "/" + own);
        return;
      }
    }
    Wav wav = wav(name, pointer);
    if (wav == null) {
      return;
    }
    int count = wav.channels().size();
    Object channel = fields.get(CHANNEL);
    if (channel == null && count > 1) {
      faults
          .add(CoreFault.REQUIRED)
          .at(pointer + "/" + CHANNEL)
          .allowed(
              Phrase.of(RecordingWords.CHANNEL_OF_SEVERAL)
                  .with("last", count - 1)
                  .with("count", count));
      return;
    }
    if (channel != null && !(channel instanceof Integer)) {
      // Its type is refused with all others; the file itself is in order.
      return;
    }
    int index = channel == null ? 0 : (Integer) channel;
    if (index < 0 || index >= count) {
      faults
          .add(NO_SUCH_WAV_CHANNEL)
          .at(pointer + "/" + CHANNEL)
          .given(index)
          .allowed(
              count == 1
                  ? Phrase.of(RecordingWords.ONLY_CHANNEL)
                  : Phrase.of(RecordingWords.CHANNELS_UP_TO).with("last", count - 1))
          .own("part", name);
      return;
    }
    fields.remove(WAV);
    fields.remove(CHANNEL);
    fields.put(SAMPLES, wav.channels().get(index));
    fields.put(RATE, wav.rateHz());
  }

  private Wav wav(String name, String pointer) {
    if (read.containsKey(name)) {
      return read.get(name);
    }
    Wav wav = null;
    try {
      wav = files.get(name).finish();
    } catch (Wav.Unreadable unreadable) {
      Remark remark =
          faults.add(unreadable.fault()).at(pointer + "/" + WAV).given(unreadable.given());
      if (unreadable.fault() == RECORDING_TOO_LONG) {
        remark.allowed(RecordingWords.AT_MOST_SAMPLES.of(RecordingRules.MOST_SAMPLES));
      } else {
        remark.allowed(Wav.readable()).own("part", name);
      }
    }
    read.put(name, wav);
    return wav;
  }
}
