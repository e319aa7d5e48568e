package org.footwell.catalogue.service;

import com.fasterxml.jackson.core.JsonProcessingException;
import java.io.IOException;
import java.io.InputStream;
import java.net.ConnectException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpConnectTimeoutException;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpTimeoutException;
import java.nio.channels.UnresolvedAddressException;
import java.time.Duration;
import java.util.Objects;
import java.util.Set;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.ScheduledFuture;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import javax.net.ssl.SSLException;
import org.footwell.catalogue.row.CannotRun;
import org.footwell.client.ApiClient;
import org.footwell.client.model.Fault;
import org.footwell.client.model.Problem;

/** One post to the batch of driver-check, and what its failures mean. */
final class Connection {

  private static final String PATH = "/v1/driver-check/batch";
  private static final String PROBLEM = "application/problem+json";
  private static final int OK = 200;
  private static final int TOO_LARGE = 413;

  /** Busy, or a proxy that has no service behind it just now. */
  private static final Set<Integer> PASSING = Set.of(429, 502, 503, 504);

  private static final int LONGEST_PROBLEM = 64 * 1024;

  /** Whether anything answered yet; until then an address is rather wrong than away. */
  private volatile boolean reached;

  private final ApiClient client;
  private final HttpClient http;
  private final ScheduledExecutorService alarm =
      Executors.newSingleThreadScheduledExecutor(
          task -> {
            Thread thread = new Thread(task, "alarm");
            thread.setDaemon(true);
            return thread;
          });

  Connection(ApiClient client) {
    this.client = client;
    this.http = client.getHttpClient();
  }

  /** Reads the body of an answer. */
  interface BodyReader<T> {
    T read(InputStream body) throws IOException, TryAgain, CannotRun;
  }

  /** Posts a body of a stated size and reads the answer, which has the same content type. */
  <T> T post(String contentType, byte[] body, BodyReader<T> reader)
      throws TryAgain, CannotRun, InterruptedException {
    HttpRequest.Builder request =
        HttpRequest.newBuilder(URI.create(client.getBaseUri() + PATH))
            .timeout(client.getReadTimeout())
            .header("Content-Type", contentType)
            .header("Accept", contentType + ", " + PROBLEM)
            .POST(HttpRequest.BodyPublishers.ofByteArray(body));
    if (client.getRequestInterceptor() != null) {
      client.getRequestInterceptor().accept(request);
    }
    try {
      HttpResponse<InputStream> response =
          http.send(request.build(), HttpResponse.BodyHandlers.ofInputStream());
      reached = true;
      return read(response, contentType, reader);
    } catch (SSLException untrusted) {
      throw new CannotRun(client.getBaseUri() + " is not trusted: " + untrusted.getMessage());
    } catch (ConnectException | HttpConnectTimeoutException away) {
      throw notThere(client.getBaseUri() + " does not answer" + reason(away) + ".");
    } catch (HttpTimeoutException slow) {
      throw new TryAgain(tooSlow());
    } catch (IOException lost) {
      throw new TryAgain("the connection to " + client.getBaseUri() + " was lost.");
    }
  }

  private TryAgain notThere(String why) throws CannotRun {
    if (!reached) {
      throw new CannotRun(why + " Is the service started, and is that its address?");
    }
    return new TryAgain(why);
  }

  private static String reason(IOException away) {
    for (Throwable cause = away; cause != null; cause = cause.getCause()) {
      if (cause instanceof UnresolvedAddressException) {
        return " (unknown host)";
      }
    }
    return "";
  }

  private String tooSlow() {
    return "no answer within " + client.getReadTimeout().toSeconds() + " s.";
  }

  /** The time limit of a request ends with its headers; this one covers the body as well. */
  private <T> T read(HttpResponse<InputStream> response, String contentType, BodyReader<T> reader)
      throws IOException, TryAgain, CannotRun {
    InputStream body = response.body();
    ScheduledFuture<?> timeIsUp =
        alarm.schedule(
            () -> close(body), client.getReadTimeout().toMillis(), TimeUnit.MILLISECONDS);
    try (body) {
      String type = response.headers().firstValue("Content-Type").orElse("");
      if (response.statusCode() != OK) {
        throw refused(response, type);
      }
      if (!type.startsWith(contentType)) {
        throw new CannotRun("What answers at " + client.getBaseUri() + " is not Footwell.");
      }
      return reader.read(body);
    } catch (IOException failure) {
      if (timeIsUp.getDelay(TimeUnit.MILLISECONDS) <= 0) {
        throw new TryAgain(tooSlow());
      }
      throw failure;
    } finally {
      timeIsUp.cancel(false);
    }
  }

  private static void close(InputStream body) {
    try {
      body.close();
    } catch (IOException alreadyBroken) {
      // whoever reads it will notice
    }
  }

  private CannotRun refused(HttpResponse<InputStream> response, String type)
      throws IOException, TryAgain {
    int status = response.statusCode();
    String said = "HTTP " + status + ".";
    if (type.startsWith(PROBLEM)) {
      said = Objects.requireNonNullElse(sentences(response.body()), said);
    }
    if (PASSING.contains(status)) {
      throw new TryAgain(said, retryAfter(response));
    }
    if (status == TOO_LARGE) {
      return new CannotRun(said + " Send fewer rows at a time with --chunk-rows.");
    }
    return new CannotRun(
        type.startsWith(PROBLEM)
            ? said
            : said
                + " Is "
                + client.getBaseUri()
                + " the address of Footwell, and does what stands before it want a --header?");
  }

  /** What a problem says, if only by its title; null where it says nothing. */
  private String sentences(InputStream body) throws IOException {
    Problem problem;
    try {
      problem = client.getObjectMapper().readValue(body.readNBytes(LONGEST_PROBLEM), Problem.class);
    } catch (JsonProcessingException foreign) {
      return "The answer is not a problem of Footwell.";
    }
    return problem.getErrors() == null || problem.getErrors().isEmpty()
        ? problem.getDetail() == null ? problem.getTitle() : problem.getDetail()
        : problem.getErrors().stream().map(Fault::getDetail).collect(Collectors.joining(" "));
  }

  /** Seconds only; a date would need the clocks of both to agree. */
  private static Duration retryAfter(HttpResponse<?> response) {
    String given = response.headers().firstValue("Retry-After").orElse("");
    return given.matches("\\d{1,6}") ? Duration.ofSeconds(Long.parseLong(given)) : Duration.ZERO;
  }
}
