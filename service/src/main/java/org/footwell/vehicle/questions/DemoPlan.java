package org.footwell.vehicle.questions;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** The demo plan of the documentation, which the build puts beside the classes. */
public final class DemoPlan {

  private DemoPlan() {}

  /** As JSON. */
  public static String json() {
    try (InputStream in = DemoPlan.class.getResourceAsStream("/examples/camper-van.json")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
