package org.footwell.web.request;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.SequenceInputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Random;
import java.util.zip.CRC32;
import java.util.zip.GZIPInputStream;
import java.util.zip.GZIPOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Which coding is chosen, and gzip against the JDK's own, which is less strict. */
class CodingTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "gzip | true | true",
        "GZIP, deflate, br | true | true",
        "x-gzip | true | true",
        "deflate, br | false | true",
        "* | true | true",
        "gzip;q=0 | false | true",
        "gzip;q=0, * | false | true",
        "*;q=0, gzip | true | false",
        "gzip;q=0.5, identity | false | true",
        "gzip, identity;q=0.5 | true | true",
        "identity;q=0, gzip | true | false",
        "identity | false | true",
        "identity, *;q=0 | false | true",
        "gzip;q=1.0, identity; q=0.5, *;q=0 | true | true",
        "gzip;q=x | false | true",
      })
  void theHeaderSaysWhatIsTaken(String header, boolean gzip, boolean identity) {
    assertEquals(new Coding.Accepted(gzip, identity), Coding.Accepted.of(header));
  }

  @ParameterizedTest
  @ValueSource(strings = {"identity;q=0", "*;q=0", "br, identity;q=0", "gzip;q=0, identity;q=0"})
  void whoTakesNothingIsRefused(String header) {
    ProblemException refused =
        assertThrows(ProblemException.class, () -> Coding.Accepted.of(header));
    assertEquals(ProblemType.NOT_ACCEPTABLE, refused.type());
  }

  private static byte[] random(int length, int kinds) {
    Random random = new Random(length);
    byte[] bytes = new byte[length];
    for (int i = 0; i < length; i++) {
      bytes[i] = (byte) random.nextInt(kinds);
    }
    return bytes;
  }

  private static byte[] gzip(byte[] plain) {
    ByteArrayOutputStream coded = new ByteArrayOutputStream();
    try (GZIPOutputStream out = new GZIPOutputStream(coded)) {
      out.write(plain);
    } catch (IOException e) {
      throw new AssertionError(e);
    }
    return coded.toByteArray();
  }

  private static byte[] decoded(InputStream coded) throws IOException {
    try (InputStream in = Coding.GZIP.decoded(coded)) {
      return in.readAllBytes();
    }
  }

  private static byte[] decoded(byte[]... coded) throws IOException {
    ByteArrayOutputStream all = new ByteArrayOutputStream();
    for (byte[] part : coded) {
      all.write(part);
    }
    return decoded(new ByteArrayInputStream(all.toByteArray()));
  }

  private static void assertBroken(String sentence, byte[]... coded) {
    ProblemException broken = assertThrows(ProblemException.class, () -> decoded(coded));
    assertEquals(ProblemType.UNREADABLE, broken.type());
    assertEquals(sentence, broken.getMessage());
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 1, 1000, 8192, 100_000, 1_000_000})
  void whatTheJdkCodesIsDecodedAndTheOtherWayRound(int length) throws IOException {
    for (int kinds : new int[] {4, 256}) {
      byte[] plain = random(length, kinds);
      assertArrayEquals(plain, decoded(gzip(plain)));
      byte[] coded = GzipOutput.coded(plain);
      assertArrayEquals(plain, new GZIPInputStream(new ByteArrayInputStream(coded)).readAllBytes());
    }
  }

  @Test
  void severalMembersAreOneBody() throws IOException {
    byte[] one = random(1000, 4);
    byte[] other = random(2000, 256);
    byte[] both = decoded(gzip(one), gzip(new byte[0]), gzip(other));
    assertArrayEquals(one, Arrays.copyOf(both, 1000));
    assertArrayEquals(other, Arrays.copyOfRange(both, 1000, 3000));
  }

  @Test
  void bytesMayComeOneByOne() throws IOException {
    byte[] plain = random(3000, 4);
    InputStream slow =
        new SequenceInputStream(InputStream.nullInputStream(), oneByOne(gzip(plain)));
    assertArrayEquals(plain, decoded(slow));
  }

  private static InputStream oneByOne(byte[] bytes) {
    return new ByteArrayInputStream(bytes) {
      @Override
      public synchronized int read(byte[] into, int offset, int length) {
        return super.read(into, offset, Math.min(1, length));
      }
    };
  }

  /** A header with everything a header can have, by RFC 1952, section 2.3. */
  @Test
  void aHeaderWithExtraFieldNameCommentAndChecksumIsRead() throws IOException {
    byte[] plain = "all of it".getBytes(StandardCharsets.US_ASCII);
    byte[] coded = gzip(plain);
    ByteArrayOutputStream header = new ByteArrayOutputStream();
    header.writeBytes(new byte[] {0x1f, (byte) 0x8b, 8, 2 + 4 + 8 + 16 + 1, 1, 2, 3, 4, 0, 3});
    header.writeBytes(new byte[] {3, 0, 'x', 'y', 'z'});
    header.writeBytes("name\0comment\0".getBytes(StandardCharsets.US_ASCII));
    CRC32 checksum = new CRC32();
    checksum.update(header.toByteArray());
    byte[] low = {(byte) checksum.getValue(), (byte) (checksum.getValue() >> 8)};
    byte[] rest = Arrays.copyOfRange(coded, 10, coded.length);
    assertArrayEquals(plain, decoded(header.toByteArray(), low, rest));
    low[0]++;
    assertBroken("The body is not well-formed gzip.", header.toByteArray(), low, rest);
  }

  /** Wherever it is cut. */
  @Test
  void aCutBodyEndsEarly() {
    byte[] coded = gzip(random(500, 8));
    for (int length = 0; length < coded.length; length++) {
      assertBroken("The body ends in the middle of its gzip.", Arrays.copyOf(coded, length));
    }
  }

  @Test
  void whatFollowsTheEndIsRefused() {
    byte[] coded = gzip(random(500, 8));
    assertBroken("The body goes on after the end of its gzip.", coded, new byte[] {0, 0, 0});
    assertBroken("The body ends in the middle of its gzip.", coded, new byte[] {0x1f});
    assertBroken(
        "The body goes on after the end of its gzip.",
        coded,
        coded,
        "x y".getBytes(StandardCharsets.US_ASCII));
  }

  /** No byte can be changed without being found, but those that say nothing about the content. */
  @Test
  void aChangedBodyIsFound() throws IOException {
    byte[] plain = random(300, 8);
    byte[] coded = gzip(plain);
    for (int i = 0; i < coded.length; i++) {
      for (int bit = 0; bit < 8; bit++) {
        boolean saysNothing = (i == 3 && bit == 0) || (i >= 4 && i < 10);
        byte[] changed = coded.clone();
        changed[i] ^= (byte) (1 << bit);
        if (saysNothing) {
          assertArrayEquals(plain, decoded(changed));
        } else {
          assertThrows(ProblemException.class, () -> decoded(changed), "byte " + i);
        }
      }
    }
  }

  @Test
  void aBombIsTooLargeLongBeforeItIsUnpacked() throws IOException {
    byte[] bomb = gzip(new byte[50_000_000]);
    InputStream in = Coding.GZIP.decoded(new ByteArrayInputStream(bomb));
    byte[] buffer = new byte[10_000];
    long read = 0;
    try {
      for (int n = in.read(buffer); n >= 0; n = in.read(buffer)) {
        read += n;
      }
      throw new AssertionError("all of it was read");
    } catch (ProblemException tooLarge) {
      assertEquals(ProblemType.TOO_LARGE, tooLarge.type());
      assertEquals(
          "The body becomes more than 100 times as large when it is unpacked.",
          tooLarge.getMessage());
    }
    long most = GunzipInput.ALWAYS + (long) GunzipInput.MOST_RATIO * bomb.length;
    assertEquals(true, read <= most, () -> "more than " + most);
  }

  @Test
  void aLittleMayBeAsDenseAsItLikes() throws IOException {
    byte[] plain = new byte[GunzipInput.ALWAYS];
    assertArrayEquals(plain, decoded(gzip(plain)));
  }
}
