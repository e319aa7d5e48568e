package org.footwell.vehicle.packages;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import org.footwell.vehicle.questions.DemoPlan;

/** The demo plan of the documentation with an invented offer beside it. */
final class DemoOffer {

  private DemoOffer() {}

  /** As JSON: the plan, then what the other file says. */
  static String request() {
    try (InputStream in = DemoOffer.class.getResourceAsStream("/examples/camper-van-offer.json")) {
      String offer = new String(in.readAllBytes(), StandardCharsets.UTF_8).strip();
      return "{\"plan\": " + DemoPlan.json() + ", " + offer.substring(1);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
