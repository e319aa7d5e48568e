package org.footwell.reference;

import com.fasterxml.jackson.databind.PropertyNamingStrategies;
import com.fasterxml.jackson.databind.json.JsonMapper;

/**
 * What the service is compared with, frozen on 2026-11-30: a handler without any class of the service,
 * with a mapper as it comes.
 */
public final class PlainHandler {

  private PlainHandler() {}

  public static void main(String[] arguments) {
    JsonMapper mapper =
        JsonMapper.builder().propertyNamingStrategy(PropertyNamingStrategies.SNAKE_CASE).build();
    TutorialServer.start(arguments[0], mapper, PlainRequest.class, PlainHandler::used);
  }

  private static void used(PlainRequest request) {
    if (request.driver().ratedOhm() <= 0) {
      throw new IllegalArgumentException("parsed, and used");
    }
  }
}
