package org.footwell.recording;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import org.footwell.recording.WavBytes.Kind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class WavReaderTest {

  private static final float[] LEFT = {0, 0.5f, -0.25f, 0.99f, -1};
  private static final float[] RIGHT = {0.125f, -0.5f, 0.75f, 0, 0.001f};

  private static Wav read(byte[] bytes, int portion) throws Wav.Unreadable {
    WavReader reader = new WavReader();
    for (int at = 0; at < bytes.length; at += portion) {
      reader.accept(ByteBuffer.wrap(bytes, at, Math.min(portion, bytes.length - at)).slice());
    }
    return reader.finish();
  }

  private static Wav.Unreadable refused(byte[] bytes) {
    return assertThrows(Wav.Unreadable.class, () -> read(bytes, bytes.length));
  }

  private static byte[] with(byte[] bytes, int at, int value) {
    byte[] changed = bytes.clone();
    changed[at] = (byte) value;
    return changed;
  }

  @ParameterizedTest
  @EnumSource(Kind.class)
  void everyKindOfSampleIsReadToItsLastBit(Kind kind) throws Wav.Unreadable {
    for (byte[] file :
        new byte[][] {
          WavBytes.of(kind, 48_000, LEFT, RIGHT), WavBytes.extensible(kind, 48_000, LEFT, RIGHT)
        }) {
      Wav wav = read(file, file.length);
      assertEquals(48_000, wav.rateHz());
      assertEquals(2, wav.channels().size());
      double step = kind == Kind.FLOAT32 ? 0 : Math.pow(2, -Math.min(kind.bits, 24));
      for (int n = 0; n < LEFT.length; n++) {
        assertEquals(LEFT[n], wav.channels().get(0).at(n), step);
        assertEquals(RIGHT[n], wav.channels().get(1).at(n), step);
      }
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 5, 7, 11, 64})
  void theSamplesDoNotDependOnThePortionsTheyComeIn(int portion) throws Wav.Unreadable {
    byte[] file = WavBytes.extensible(Kind.INT24, 192_000, LEFT, RIGHT, LEFT);
    Wav wav = read(file, portion);
    assertEquals(3, wav.channels().size());
    assertEquals(5, wav.channels().get(2).size());
    assertEquals(0.001f, wav.channels().get(1).at(4), 1e-7);
    assertEquals(-1, wav.channels().get(2).at(4), 0);
  }

  @Test
  void bytesAfterTheSamplesAreLeftAlone() throws Wav.Unreadable {
    byte[] file = WavBytes.of(Kind.INT16, 44_100, LEFT);
    assertEquals(5, read(Arrays.copyOf(file, file.length + 9), 4).channels().get(0).size());
  }

  @Test
  void aStreamOfUnknownLengthIsReadToItsEnd() throws Wav.Unreadable {
    byte[] file = WavBytes.of(Kind.INT16, 44_100, LEFT);
    for (int i = 40; i < 44; i++) {
      file[i] = (byte) 0xFF;
    }
    assertEquals(5, read(file, 3).channels().get(0).size());
  }

  @Test
  void whatIsNoWavFileIsToldApart() {
    assertEquals(
        RecordingFault.NOT_A_WAV_FILE,
        refused("ID3 this is something else".getBytes(StandardCharsets.US_ASCII)).fault());
    assertEquals(RecordingFault.NOT_A_WAV_FILE, refused(new byte[] {'R', 'I'}).fault());
    assertEquals(RecordingFault.NOT_A_WAV_FILE, refused(new byte[0]).fault());
    byte[] rf64 = WavBytes.of(Kind.INT16, 44_100, LEFT);
    System.arraycopy("RF64".getBytes(StandardCharsets.US_ASCII), 0, rf64, 0, 4);
    assertEquals("an RF64 file", refused(rf64).given().toString());
  }

  @Test
  void aFileThatBreaksOffIsTruncatedWhereverItDoes() {
    byte[] file = WavBytes.of(Kind.INT16, 44_100, LEFT);
    Wav.Unreadable refused = refused(Arrays.copyOf(file, file.length - 3));
    assertEquals(RecordingFault.WAV_TRUNCATED, refused.fault());
    assertEquals(RecordingFault.WAV_TRUNCATED, refused(Arrays.copyOf(file, 30)).fault());
    assertEquals(RecordingFault.WAV_TRUNCATED, refused(Arrays.copyOf(file, 40)).fault());
  }

  @Test
  void aFileWithoutSamplesSaysSo() {
    byte[] file = WavBytes.of(Kind.INT16, 44_100, new float[0]);
    assertEquals(RecordingFault.WAV_WITHOUT_SAMPLES, refused(file).fault());
    assertEquals(RecordingFault.WAV_WITHOUT_SAMPLES, refused(Arrays.copyOf(file, 36)).fault());
  }

  @Test
  void otherFormatsAreNamed() {
    byte[] file = WavBytes.of(Kind.INT16, 44_100, LEFT);
    assertEquals("A-law", refused(with(file, 20, 6)).given().toString());
    assertEquals("the format with tag 99", refused(with(file, 20, 99)).given().toString());
    assertEquals("8-bit integers", refused(with(file, 34, 8)).given().toString());
    assertEquals("0 channels", refused(with(file, 22, 0)).given().toString());
    assertEquals("65 channels", refused(with(file, 22, 65)).given().toString());
    assertEquals(
        "a frame of 3 bytes that does not fit its other figures",
        refused(with(file, 32, 3)).given().toString());
    assertEquals(
        "a sample rate of 22050 Hz",
        refused(WavBytes.of(Kind.INT16, 22_050, LEFT)).given().toString());
    assertEquals(
        "64-bit floating point",
        refused(with(WavBytes.of(Kind.FLOAT32, 44_100, LEFT), 34, 64)).given().toString());
  }

  @Test
  void samplesBeforeTheirFormatAreRefused() {
    byte[] file = WavBytes.of(Kind.INT16, 44_100, LEFT);
    System.arraycopy("junk".getBytes(StandardCharsets.US_ASCII), 0, file, 12, 4);
    assertEquals("samples before their format", refused(file).given().toString());
  }

  @Test
  void aLengthThatIsALieCostsNoMemory() {
    byte[] file = WavBytes.of(Kind.INT16, 44_100, LEFT);
    file[43] = 0x7F;
    assertEquals(RecordingFault.WAV_TRUNCATED, refused(file).fault());
  }

  @Test
  void moreThanTheMostSamplesAreRefused() {
    byte[] file = WavBytes.of(Kind.INT16, 44_100, new float[RecordingRules.MOST_SAMPLES + 1]);
    assertEquals(RecordingFault.RECORDING_TOO_LONG, refused(file).fault());
  }
}
