package org.footwell.growth;

import com.fasterxml.jackson.core.type.TypeReference;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import org.footwell.recording.Wav;
import org.footwell.recording.WavReader;
import org.footwell.web.UploadBody;

/** Requests with recordings as they are once their files were read: samples in place of the names of files. */
public final class Recorded {

  private final UploadBody upload;

  /** Files that are one array of bytes are read once. */
  private final IdentityHashMap<byte[], Wav> read = new IdentityHashMap<>();

  private Recorded(UploadBody upload) {
    this.upload = upload;
  }

  /** In untyped form. */
  public static Object of(UploadBody upload) {
    try {
      Map<String, Object> request =
          Lenders.MAPPER.readValue(upload.request(), new TypeReference<>() {});
      new Recorded(upload).place(request);
      return request;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private void place(Object node) {
    if (node instanceof List<?> list) {
      list.forEach(this::place);
    } else if (node instanceof Map<?, ?> map) {
      @SuppressWarnings("unchecked") // fields of JSON have texts for names
      Map<String, Object> fields = (Map<String, Object>) map;
      if (fields.remove("wav") instanceof String name) {
        Wav wav = read.computeIfAbsent(upload.files().get(name), Recorded::wav);
        fields.put("samples", wav.channels().get(0));
        fields.put("rate_hz", wav.rateHz());
      }
      fields.values().forEach(this::place);
    }
  }

  private static Wav wav(byte[] file) {
    WavReader reader = new WavReader();
    reader.accept(ByteBuffer.wrap(file));
    try {
      return reader.finish();
    } catch (Wav.Unreadable unreadable) {
      throw new IllegalArgumentException(unreadable);
    }
  }
}
