package org.footwell.client;

import static java.nio.charset.StandardCharsets.UTF_8;

import com.fasterxml.jackson.core.type.TypeReference;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;

/** What all operations share: a request is sent, and its answer read into the type it has. */
final class Call {

  private final ApiClient client;

  Call(ApiClient client) {
    this.client = client;
  }

  <T> T send(String method, String path, Query query, Object body, TypeReference<T> type)
      throws ApiException {
    try {
      HttpResponse<byte[]> response =
          client
              .getHttpClient()
              .send(request(method, path + query, body), BodyHandlers.ofByteArray());
      if (response.statusCode() / 100 != 2) {
        String problem = new String(response.body(), UTF_8);
        String message = method + " " + path + ": " + response.statusCode() + " " + problem;
        throw new ApiException(response.statusCode(), message, response.headers(), problem);
      }
      return type.getType() == String.class
          ? cast(new String(response.body(), UTF_8))
          : client.getObjectMapper().readValue(response.body(), type);
    } catch (IOException e) {
      throw new ApiException(e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new ApiException(e);
    }
  }

  private HttpRequest request(String method, String address, Object body) throws IOException {
    HttpRequest.Builder request =
        HttpRequest.newBuilder(URI.create(client.getBaseUri() + address))
            .header("Accept", "application/json, text/plain;q=0.5");
    if (body == null) {
      request.method(method, BodyPublishers.noBody());
    } else {
      byte[] json = client.getObjectMapper().writeValueAsBytes(body);
      request
          .header("Content-Type", "application/json")
          .method(method, BodyPublishers.ofByteArray(json));
    }
    if (client.getReadTimeout() != null) {
      request.timeout(client.getReadTimeout());
    }
    if (client.getRequestInterceptor() != null) {
      client.getRequestInterceptor().accept(request);
    }
    return request.build();
  }

  @SuppressWarnings("unchecked") // asked for as a text
  private static <T> T cast(String text) {
    return (T) text;
  }
}
