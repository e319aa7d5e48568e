package org.footwell.web.request;

import io.javalin.http.Context;
import java.time.Duration;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.footwell.calculation.Calculation;
import org.footwell.calculation.Engine;
import org.footwell.calculation.Names;

/** All calculations by their id, each prepared once. */
public final class Endpoints {

  private final Map<String, Endpoint<?, ?>> byId = new LinkedHashMap<>();

  public Endpoints(List<Calculation<?, ?>> calculations, Engine engine, Duration deadline) {
    for (Calculation<?, ?> calculation : calculations) {
      byId.put(calculation.card().id(), new Endpoint<>(calculation, engine, deadline));
    }
  }

  public boolean knows(String id) {
    return byId.containsKey(id);
  }

  Collection<Endpoint<?, ?>> all() {
    return byId.values();
  }

  /**
   * The calculation an address names.
   *
   * @throws ProblemException if there is none of that name
   */
  public Endpoint<?, ?> of(Context ctx) {
    String id = ctx.pathParam("calculation");
    Endpoint<?, ?> endpoint = byId.get(id);
    if (endpoint == null) {
      throw ProblemException.of(
          ProblemType.NOT_FOUND,
          "There is no such calculation"
              + Names.nearest(id, byId.keySet())
                  .map(near -> ". Did you mean " + near + "?")
                  .orElse("; there are " + String.join(", ", byId.keySet()) + "."));
    }
    return endpoint;
  }
}
