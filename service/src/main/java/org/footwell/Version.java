package org.footwell;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** The version of the service, as the build states it. */
public final class Version {

  public static final String NUMBER = read();

  private Version() {}

  private static String read() {
    try (InputStream in = Version.class.getResourceAsStream("/footwell.version")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8).strip();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
