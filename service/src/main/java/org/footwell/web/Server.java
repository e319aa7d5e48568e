package org.footwell.web;

import io.javalin.Javalin;
import io.javalin.compression.CompressionStrategy;
import io.javalin.config.JavalinConfig;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.Handler;
import io.javalin.http.HandlerType;
import io.javalin.http.HttpResponseException;
import io.javalin.util.JavalinBindException;
import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.LongSupplier;
import java.util.function.Supplier;
import org.eclipse.jetty.util.thread.QueuedThreadPool;
import org.footwell.analysis.registry.Analysis;
import org.footwell.calculation.Calculation;
import org.footwell.calculation.Document;
import org.footwell.calculation.Engine;
import org.footwell.web.batch.BatchHandler;
import org.footwell.web.batch.SweepHandler;
import org.footwell.web.batch.Workers;
import org.footwell.web.limits.Admission;
import org.footwell.web.limits.CallerRules;
import org.footwell.web.pages.Metrics;
import org.footwell.web.pages.MetricsPort;
import org.footwell.web.pages.PageWords;
import org.footwell.web.pages.Pages;
import org.footwell.web.request.Coding;
import org.footwell.web.request.Endpoints;
import org.footwell.web.request.Exchange;
import org.footwell.web.request.Format;
import org.footwell.web.request.ProblemException;
import org.footwell.web.request.ProblemType;
import org.footwell.web.request.ProblemWords;
import org.footwell.web.request.Problems;
import org.footwell.web.request.Rendering;
import org.footwell.web.request.RequestId;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** The HTTP server with all its routes. */
public final class Server implements AutoCloseable {

  private static final Logger LOG = LoggerFactory.getLogger(Server.class);

  /** Enough for a usual answer; the framework's own default costs a large buffer per answer. */
  private static final int RESPONSE_BUFFER = 2048;

  /** Time that threads get when requests are broken off. */
  private static final long BREAKING_OFF_MS = 1_000;

  /** References in 64 bytes: Jetty would look up how long they are, by way of 200 classes that nothing else needs. */
  private static final int REFERENCES_PER_CACHE_LINE = 16;

  static {
    System.setProperty(
        "org.eclipse.jetty.util.referencesPerCacheLine",
        Integer.toString(REFERENCES_PER_CACHE_LINE));
  }

  private static final List<HandlerType> METHODS =
      List.of(
          HandlerType.GET,
          HandlerType.HEAD,
          HandlerType.POST,
          HandlerType.PUT,
          HandlerType.PATCH,
          HandlerType.DELETE,
          HandlerType.TRACE);

  private final Endpoints endpoints;
  private final CalculationHandler calculation;
  private final Workers workers = new Workers();
  private final BatchHandler batch;
  private final SweepHandler sweep;
  private final Metrics metrics;
  private final Optional<MetricsPort> metricsPort;
  private final Pages pages;
  private final Cors cors;
  private final Consumer<Context> waiting;
  private final CallerRules callers;
  private final LongSupplier nanos;
  private final Javalin app;
  private final String host;
  private final OrderlyStop stop;
  private org.eclipse.jetty.server.Server jetty;
  private volatile boolean ready;

  /**
   * Prepares to listen.
   *
   * @param calculations how to make each of them, by its id
   * @param document what they can be put to as it stands
   */
  public Server(
      Map<String, Supplier<Calculation<?, ?>>> calculations,
      Document<?> document,
      Settings settings,
      String version) {
    this(calculations, document, settings, version, System::nanoTime);
  }

  /** The same by another clock, for what callers may do in a time. */
  Server(
      Map<String, Supplier<Calculation<?, ?>>> calculations,
      Document<?> document,
      Settings settings,
      String version,
      LongSupplier nanos) {
    endpoints = new Endpoints(calculations, new Engine(), settings.deadline());
    calculation = new CalculationHandler(endpoints, document, settings, version);
    batch = new BatchHandler(endpoints, settings.bodyBytes(), workers);
    sweep = new SweepHandler(endpoints, settings.bodyBytes(), workers);
    pages = new Pages(version);
    cors = new Cors(settings.origins());
    host = settings.host();
    waiting = Exchange.waiting(settings.pace(), nanos);
    callers = settings.callers();
    this.nanos = nanos;
    metrics = new Metrics(version);
    metricsPort =
        settings.metricsPort() == 0
            ? Optional.empty()
            : Optional.of(new MetricsPort(host, settings.metricsPort(), metrics));
    stop = settings.stop();
    app = Javalin.create(config -> configure(config, settings));
  }

  /**
   * Begins to listen.
   *
   * @throws IllegalArgumentException if the host or the port cannot be had
   */
  public Server start() {
    metricsPort.ifPresent(MetricsPort::open);
    try {
      app.start();
    } catch (JavalinBindException taken) {
      throw new IllegalArgumentException(
          isOfThisMachine(host)
              ? "FOOTWELL_PORT must be a port that is free and may be used: " + taken.getMessage()
              : "FOOTWELL_HOST must be a name or an address of this machine, not " + host,
          taken);
    }
    ready = true;
    LOG.info("listening on port {}", port());
    return this;
  }

  private static boolean isOfThisMachine(String host) {
    try (ServerSocket onAnyPort = new ServerSocket(0, 1, InetAddress.getByName(host))) {
      return onAnyPort.isBound();
    } catch (IOException unknownOrOfAnother) {
      return false;
    }
  }

  public int port() {
    return app.port();
  }

  /** Says not ready first, then closes the port, then finishes what is under way. */
  @Override
  public void close() {
    if (ready) {
      ready = false;
      LOG.info("stopping, the port closes in {} ms", stop.delay().toMillis());
      int brokenOff = stop.drain(jetty);
      if (brokenOff > 0) {
        LOG.warn(
            "broken off, not done within {} ms: {} of the requests under way",
            stop.finish().toMillis(),
            brokenOff);
      }
    }
    app.stop();
    workers.close();
    metricsPort.ifPresent(MetricsPort::close);
    metrics.close();
  }

  /** What comes before any request is looked at; in one step, since each that is a route of its own costs. */
  private void receive(Context ctx) {
    RequestId.give(ctx);
    waiting.accept(ctx);
    cors.apply(ctx);
    Coding.choose(ctx);
    partWhenStopping(ctx);
  }

  /** Has callers move away from a service that stops: each connection ends with its next answer. */
  private void partWhenStopping(Context ctx) {
    if (!ready) {
      ctx.res().setHeader("Connection", "close");
    }
  }

  private void configure(JavalinConfig config, Settings settings) {
    config.startup.showJavalinBanner = false;
    config.startup.showOldJavalinVersionWarning = false;
    config.startup.startupWatcherEnabled = false;
    config.http.responseBufferSize = RESPONSE_BUFFER;
    config.http.compressionStrategy = CompressionStrategy.NONE;
    config.http.generateEtags = false;
    config.jetty.addConnector(
        (server, http) -> Connections.at(settings.host(), settings.port(), server, http));
    config.jetty.modifyServer(
        server -> {
          jetty = server;
          server.setErrorHandler(new BareErrors());
          ((QueuedThreadPool) server.getThreadPool()).setStopTimeout(BREAKING_OFF_MS);
        });
    config.jetty.modifyServletContextHandler(
        handler -> handler.setSessionHandler(new NoSessions()));
    config.router.ignoreTrailingSlashes = false;
    config.router.javaLangErrorHandler(
        (response, error) -> {
          LOG.error("request failed", error);
          response.setStatus(ProblemType.INTERNAL.status());
        });
    routes(config.routes);
    if (settings.logRequests()) {
      RequestLines lines = new RequestLines(endpoints);
      config.routes.after(lines::note);
      config.jetty.modifyServer(server -> server.setRequestLog(lines));
    }
    config.routes.exception(HttpResponseException.class, (e, ctx) -> notFound(ctx));
    config.routes.exception(Exception.class, (e, ctx) -> Problems.answer(ctx, e));
  }

  private void routes(RoutesConfig routes) {
    routes.before(this::receive);
    if (callers.any()) {
      Admission admission = new Admission(callers, nanos);
      routes.before("/v1/*", metrics.counted(admission::enter));
      routes.after("/v1/*", admission::leave);
    }
    route(
        routes,
        "/v1/{calculation}",
        calculation::allowed,
        Map.of(
            HandlerType.GET, metrics.timed("get", endpoints, calculation::get),
            HandlerType.POST, metrics.timed("post", endpoints, calculation::post)));
    route(
        routes,
        "/v1/{calculation}/of-plan",
        calculation::allowedOfDocument,
        Map.of(HandlerType.POST, metrics.timed("of-plan", endpoints, calculation::postDocument)));
    route(
        routes,
        "/v1/{calculation}/batch",
        batch::allowed,
        Map.of(HandlerType.POST, metrics.timed("batch", endpoints, batch::post)));
    route(
        routes,
        "/v1/{calculation}/sweep",
        sweep::allowed,
        Map.of(HandlerType.POST, metrics.timed("sweep", endpoints, sweep::post)));
    for (Analysis analysis : Analysis.values()) {
      route(
          routes,
          "/v1/{calculation}/" + analysis.id(),
          ctx -> calculation.allowed(ctx, analysis),
          Map.of(
              HandlerType.GET,
              metrics.timed(analysis.id(), endpoints, ctx -> calculation.get(ctx, analysis)),
              HandlerType.POST,
              metrics.timed(analysis.id(), endpoints, ctx -> calculation.post(ctx, analysis))));
    }
    page(routes, "/health/live", Server::up);
    page(routes, "/health/ready", this::ready);
    if (metricsPort.isEmpty()) {
      page(routes, Metrics.PATH, metrics::scrape);
    }
    page(routes, "/problems/{type}", pages::problem);
    Pages.FIXED.forEach((path, file) -> page(routes, path, ctx -> pages.serve(ctx, file)));
    page(routes, PageWords.PATH, pages::words);
  }

  private void ready(Context ctx) {
    if (!ready) {
      throw ProblemException.of(ProblemType.STOPPING, ProblemWords.NOT_READY);
    }
    up(ctx);
  }

  private static void up(Context ctx) {
    Exchange.write(ctx, 200, Format.JSON.contentType(), Rendering.utf8("{\"status\":\"up\"}"));
  }

  private static void page(RoutesConfig routes, String path, Handler handler) {
    route(routes, path, ctx -> List.of("GET", "HEAD", "OPTIONS"), Map.of(HandlerType.GET, handler));
  }

  /** Every method at a path: HEAD as GET, OPTIONS and 405 with Allow. */
  private static void route(
      RoutesConfig routes,
      String path,
      Function<Context, List<String>> allowed,
      Map<HandlerType, Handler> handlers) {
    for (HandlerType method : METHODS) {
      Handler handler = handlers.get(method.equals(HandlerType.HEAD) ? HandlerType.GET : method);
      routes.addHttpHandler(
          method,
          path,
          handler != null
              ? handler
              : ctx -> {
                throw ProblemException.wrongMethod(ctx.method().name(), allowed.apply(ctx));
              });
    }
    routes.addHttpHandler(
        HandlerType.OPTIONS,
        path,
        ctx -> {
          ctx.res().setHeader("Allow", String.join(", ", allowed.apply(ctx)));
          ctx.res().setStatus(204);
        });
  }

  private static void notFound(Context ctx) {
    HandlerType method = ctx.method();
    if (!METHODS.contains(method) && !method.equals(HandlerType.OPTIONS)) {
      List<String> any = List.of("GET", "HEAD", "POST", "OPTIONS");
      Problems.answer(ctx, ProblemException.wrongMethod(method.name(), any));
      return;
    }
    Problems.answer(ctx, ProblemException.of(ProblemType.NOT_FOUND, ProblemWords.NOTHING_HERE));
  }
}
