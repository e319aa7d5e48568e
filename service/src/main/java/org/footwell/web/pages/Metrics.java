package org.footwell.web.pages;

import io.javalin.http.Context;
import io.javalin.http.Handler;
import io.micrometer.core.instrument.Counter;
import io.micrometer.core.instrument.FunctionCounter;
import io.micrometer.core.instrument.Timer;
import io.micrometer.prometheusmetrics.PrometheusConfig;
import io.micrometer.prometheusmetrics.PrometheusMeterRegistry;
import java.time.Duration;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.LongAdder;
import java.util.stream.DoubleStream;
import org.footwell.web.request.Endpoints;
import org.footwell.web.request.Exchange;
import org.footwell.web.request.ProblemException;
import org.footwell.web.request.ProblemType;
import org.footwell.web.request.Problems;
import org.footwell.web.request.Rendering;

/**
 * Times every calculation and counts its answers. No label holds anything of a caller: calculations,
 * operations and statuses are ours, and only answers have the status, so that callers who try
 * everything make thousands of figures and not a multiple of them.
 */
public final class Metrics implements AutoCloseable {

  public static final String PATH = "/metrics";

  static final String CONTENT_TYPE = "text/plain;version=0.0.4;charset=utf-8";

  /** Upper ends of the buckets, from a usual answer up to the usual deadline. */
  private static final Duration[] BUCKETS =
      DoubleStream.of(0.5, 1, 2.5, 5, 10, 25, 50, 100, 250, 500, 1_000, 2_500, 5_000, 10_000)
          .mapToObj(ms -> Duration.ofNanos(Math.round(ms * 1e6)))
          .toArray(Duration[]::new);

  private PrometheusMeterRegistry registry;
  private final Map<Answer, Meters> meters = new ConcurrentHashMap<>();
  private final Map<ProblemType, LongAdder> turnedAway =
      Map.of(ProblemType.KEY_NEEDED, new LongAdder(), ProblemType.TOO_MANY_CALLS, new LongAdder());
  private final String version;
  private MachineFigures machine;

  private record Answer(String calculation, String operation, int status) {}

  private record Meters(Timer timer, Counter answers) {}

  public Metrics(String version) {
    this.version = version;
  }

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

  /** The handler that lets requests in; whom it turns away is counted by why. */
  public Handler counted(Handler admission) {
    return ctx -> {
      try {
        admission.handle(ctx);
      } catch (ProblemException refusal) {
        turnedAway.get(refusal.type()).increment();
        throw refusal;
      }
    };
  }

  private void record(Context ctx, String operation, Endpoints endpoints, long nanos) {
    String id = ctx.pathParam("calculation");
    Answer answer = new Answer(endpoints.knows(id) ? id : "none", operation, ctx.res().getStatus());
    Meters of = meters.computeIfAbsent(answer, this::meters);
    of.timer().record(nanos, TimeUnit.NANOSECONDS);
    of.answers().increment();
  }

  private Meters meters(Answer answer) {
    return new Meters(
        Timer.builder("footwell.calculation")
            .description("Time from reading a request to the end of its answer")
            .tags("calculation", answer.calculation(), "operation", answer.operation())
            .serviceLevelObjectives(BUCKETS)
            .register(registry()),
        Counter.builder("footwell.answers")
            .description("Answers given")
            .tags("calculation", answer.calculation(), "operation", answer.operation())
            .tag("status", Integer.toString(answer.status()))
            .register(registry()));
  }

  /** Made after the first answer has gone: loading it takes a while. */
  private synchronized PrometheusMeterRegistry registry() {
    if (registry == null) {
      registry = new PrometheusMeterRegistry(PrometheusConfig.DEFAULT);
    }
    return registry;
  }

  /** Answers with all figures. */
  public void scrape(Context ctx) {
    Exchange.write(ctx, 200, CONTENT_TYPE, Rendering.utf8(text()));
  }

  /** All figures in the form of Prometheus. */
  String text() {
    beginMachine();
    return registry().scrape();
  }

  /** Only when first asked for: the beans behind it take long to load. */
  private synchronized void beginMachine() {
    if (machine == null) {
      machine = new MachineFigures(version, registry());
      turnedAway.forEach(this::tellTurnedAway);
    }
  }

  private void tellTurnedAway(ProblemType why, LongAdder count) {
    FunctionCounter.builder("footwell.turned.away", count, LongAdder::sum)
        .description("Requests not let in: without a known key, or too many from one caller")
        .tag("status", Integer.toString(why.status()))
        .register(registry());
  }

  @Override
  public synchronized void close() {
    if (machine != null) {
      machine.close();
    }
    if (registry != null) {
      registry.close();
    }
  }
}
