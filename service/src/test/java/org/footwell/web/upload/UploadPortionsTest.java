package org.footwell.web.upload;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import org.footwell.recording.Wav;
import org.footwell.recording.WavBytes;
import org.footwell.recording.WavBytes.Kind;
import org.footwell.web.request.ProblemException;
import org.footwell.web.request.ProblemType;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** An upload is the same in whatever portions it comes, even where they cut a boundary. */
class UploadPortionsTest {

  private static final String TYPE = "multipart/form-data; boundary=\"x-y\"";

  private static UploadMemory.Share share() {
    return new UploadMemory(256 << 20, 1).share(-1);
  }

  private static byte[] body(String end) throws IOException {
    // Samples that look like the start of a boundary.
    float[] dashes = new float[200];
    for (int n = 0; n < dashes.length; n++) {
      dashes[n] = n % 3 == 0 ? 0x0A0D / 32768f : 0x2D2D / 32768f;
    }
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.writeBytes(
        "--x-y\r\nContent-Disposition: form-data; name=\"f\"; filename=\"f.wav\"\r\n\r\n"
            .getBytes(StandardCharsets.US_ASCII));
    out.writeBytes(WavBytes.of(Kind.INT16, 48_000, dashes));
    out.writeBytes(
        "\r\n--x-y\r\nContent-Disposition: form-data; name=\"request\"\r\n\r\n{\"a\": [1, 2]}"
            .getBytes(StandardCharsets.US_ASCII));
    out.writeBytes(end.getBytes(StandardCharsets.US_ASCII));
    return out.toByteArray();
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 5, 8, 13, 100, 10_000})
  void portionsDoNotMatter(int portion) throws IOException, Wav.Unreadable {
    InputStream in = new Drip(body("\r\n--x-y--\r\n"), portion);
    Upload upload = Upload.read(in, TYPE, 1000, share());
    assertEquals("{a=[1, 2]}", String.valueOf(upload.request()));
    Wav wav = upload.files().get("f").finish();
    assertEquals(200, wav.channels().get(0).size());
    assertEquals(0x0A0D / 32768f, wav.channels().get(0).at(198), 0);
    assertEquals(Map.of("f", upload.files().get("f")), upload.files());
  }

  @Test
  void anUploadThatBreaksOffIsUnreadable() throws IOException {
    for (String end : new String[] {"", "\r\n--x", "\r\n--x-y"}) {
      byte[] body = body(end);
      ProblemException refused =
          assertThrows(
              ProblemException.class,
              () -> Upload.read(new ByteArrayInputStream(body), TYPE, 1000, share()),
              end);
      assertEquals(ProblemType.UNREADABLE, refused.type());
    }
  }

  @Test
  void aRequestPartLargerThanItsLimitIsRefused() throws IOException {
    byte[] body = body("\r\n--x-y--\r\n");
    ProblemException refused =
        assertThrows(
            ProblemException.class,
            () -> Upload.read(new ByteArrayInputStream(body), TYPE, 5, share()));
    assertEquals(ProblemType.TOO_LARGE, refused.type());
  }
}
