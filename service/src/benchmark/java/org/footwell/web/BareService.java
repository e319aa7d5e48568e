package org.footwell.web;

import org.footwell.web.request.Json;

import io.javalin.Javalin;
import io.javalin.json.JavalinJackson;
import java.io.IOException;
import java.time.Duration;
import org.footwell.calculation.Answer;
import org.footwell.calculation.Engine;
import org.footwell.acoustic.level.SoundLevel;
import org.footwell.acoustic.level.SoundLevelRequest;

/**
 * What the service is compared with: the handler of every tutorial, which parses a request into a
 * class and writes an object of the same size, and does nothing else.
 */
public final class BareService {

  private BareService() {}

  public static void main(String[] arguments) throws IOException {
    SoundLevel calculation = new SoundLevel();
    SoundLevelRequest example =
        Json.MAPPER.readValue(calculation.card().example(), SoundLevelRequest.class);
    Answer<?> answer =
        new Engine().answer(calculation, example, false, Duration.ofSeconds(10));
    Javalin.create(
            config -> {
              config.startup.showJavalinBanner = false;
              config.jsonMapper(new JavalinJackson(Json.MAPPER.copy(), false));
              config.routes.post(
                  "/v1/sound-level",
                  ctx -> ctx.json(same(answer, ctx.bodyAsClass(SoundLevelRequest.class))));
              config.routes.get("/health/ready", ctx -> ctx.result("up"));
            })
        .start("127.0.0.1", Integer.parseInt(arguments[0]));
  }

  private static Answer<?> same(Answer<?> answer, SoundLevelRequest request) {
    if (request.driver().ratedOhm() <= 0) {
      throw new IllegalArgumentException("parsed, and used");
    }
    return answer;
  }
}
