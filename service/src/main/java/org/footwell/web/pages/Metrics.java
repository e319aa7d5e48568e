package org.footwell.web.pages;

import io.javalin.http.Context;
import io.javalin.http.Handler;
import io.micrometer.core.instrument.Tags;
import io.micrometer.core.instrument.Timer;
import io.micrometer.core.instrument.binder.jvm.JvmMemoryMetrics;
import io.micrometer.core.instrument.binder.jvm.JvmThreadMetrics;
import io.micrometer.core.instrument.binder.system.ProcessorMetrics;
import io.micrometer.prometheusmetrics.PrometheusConfig;
import io.micrometer.prometheusmetrics.PrometheusMeterRegistry;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.TimeUnit;
import org.footwell.web.request.Endpoints;
import org.footwell.web.request.Exchange;
import org.footwell.web.request.Problems;
import org.footwell.web.request.Rendering;

/** Counts and times every calculation, by operation and status. */
public final class Metrics {

  private final PrometheusMeterRegistry registry =
      new PrometheusMeterRegistry(PrometheusConfig.DEFAULT);
  private final Map<Key, Timer> timers = new ConcurrentHashMap<>();
  private boolean jvmBound;

  private record Key(String calculation, String operation, int status) {}

  /** The handler, timed; an unknown calculation counts as none. */
  public Handler timed(String operation, Endpoints endpoints, Handler handler) {
    return ctx -> {
      long start = System.nanoTime();
      try {
        handler.handle(ctx);
      } catch (RuntimeException failure) {
        Problems.answer(ctx, failure);
      }
      record(ctx, operation, endpoints, System.nanoTime() - start);
    };
  }

  private void record(Context ctx, String operation, Endpoints endpoints, long nanos) {
    String id = ctx.pathParam("calculation");
    Key key = new Key(endpoints.knows(id) ? id : "none", operation, ctx.res().getStatus());
    timers.computeIfAbsent(key, this::timer).record(nanos, TimeUnit.NANOSECONDS);
  }

  private Timer timer(Key key) {
    return Timer.builder("footwell.calculation")
        .description("Time from reading a request to the end of its answer")
        .tags(
            Tags.of(
                "calculation", key.calculation(),
                "operation", key.operation(),
                "status", Integer.toString(key.status())))
        .register(registry);
  }

  public void scrape(Context ctx) {
    bindJvm();
    Exchange.write(
        ctx, 200, "text/plain;version=0.0.4;charset=utf-8", Rendering.utf8(registry.scrape()));
  }

  /** Only when first asked for: the beans behind it take long to load. */
  private synchronized void bindJvm() {
    if (!jvmBound) {
      new JvmMemoryMetrics().bindTo(registry);
      new JvmThreadMetrics().bindTo(registry);
      new ProcessorMetrics().bindTo(registry);
      jvmBound = true;
    }
  }
}
