package org.footwell.reference;

import com.fasterxml.jackson.databind.ObjectMapper;
import io.javalin.Javalin;
import io.javalin.json.JavalinJackson;
import java.util.function.Consumer;

/** A server with one route as tutorials write it: the body becomes a class, an object becomes the answer. */
final class TutorialServer {

  private TutorialServer() {}

  /**
   * Listens on the loopback address.
   *
   * @param used looks at the request, so that reading it is not in vain
   */
  static <Q> void start(String port, ObjectMapper mapper, Class<Q> type, Consumer<Q> used) {
    // The service's jar holds a logger; what the service is compared with logs nothing.
    System.setProperty("slf4j.provider", "org.slf4j.helpers.NOP_FallbackServiceProvider");
    Javalin.create(
            config -> {
              config.startup.showJavalinBanner = false;
              config.jsonMapper(new JavalinJackson(mapper, false));
              config.routes.post(
                  "/v1/sound-level",
                  ctx -> {
                    used.accept(ctx.bodyAsClass(type));
                    ctx.json(LevelAnswer.EXAMPLE);
                  });
              config.routes.get("/health/ready", ctx -> ctx.result("up"));
            })
        .start("127.0.0.1", Integer.parseInt(port));
  }
}
