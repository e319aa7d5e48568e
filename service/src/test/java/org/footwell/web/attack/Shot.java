package org.footwell.web.attack;

import java.io.ByteArrayOutputStream;
import java.net.URI;
import java.net.URISyntaxException;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Optional;
import org.footwell.web.ContractCheck.Asked;
import org.footwell.web.request.Exchange;

/**
 * One request of an attack.
 *
 * @param address path and query as they are sent
 * @param body its bytes as letters of ISO 8859-1; null where there is none
 */
record Shot(
    String operation, String method, String address, Map<String, String> headers, String body) {

  private static final int SHOWN = 1_500;

  /** The bytes on the wire. */
  byte[] bytes() {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    StringBuilder head = new StringBuilder(method + " " + address + " HTTP/1.1\r\nHost: a\r\n");
    headers.forEach((name, value) -> head.append(name).append(": ").append(value).append("\r\n"));
    if (body != null) {
      head.append("Content-Length: ").append(body.length()).append("\r\n");
    }
    out.writeBytes(head.append("\r\n").toString().getBytes(StandardCharsets.UTF_8));
    out.writeBytes(letters());
    return out.toByteArray();
  }

  /** As the contract sees it; nothing where its address is none or is written in an unusual way. */
  Optional<Asked> asked() {
    try {
      URI uri = new URI(address);
      boolean usual = uri.getRawPath() != null && uri.getRawPath().matches("[/a-z0-9_.-]*");
      URLDecoder.decode(String.valueOf(uri.getRawQuery()), StandardCharsets.UTF_8);
      return usual && uri.normalize().equals(uri) ? Optional.of(asked(uri)) : Optional.empty();
    } catch (URISyntaxException | IllegalArgumentException unusual) {
      return Optional.empty();
    }
  }

  private Asked asked(URI uri) {
    String type = Exchange.mediaType(headers.get("Content-Type"));
    return new Asked(method, uri, type, text());
  }

  private byte[] letters() {
    return body == null ? new byte[0] : body.getBytes(StandardCharsets.ISO_8859_1);
  }

  private String text() {
    return new String(letters(), StandardCharsets.UTF_8);
  }

  @Override
  public String toString() {
    String whole = new String(bytes(), StandardCharsets.UTF_8);
    return whole.length() <= SHOWN
        ? whole
        : whole.substring(0, SHOWN) + "… (" + whole.length() + " characters)";
  }
}
