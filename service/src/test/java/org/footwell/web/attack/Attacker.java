package org.footwell.web.attack;

import java.io.BufferedInputStream;
import java.io.ByteArrayOutputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.net.InetAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Map;
import java.util.TreeMap;
import org.footwell.web.ContractCheck.Told;
import org.footwell.web.request.Exchange;

/** A connection that sends what no well-behaved client would, and reads what comes back by the letter. */
final class Attacker {

  private final int port;
  private final Duration patience;
  private Socket socket;
  private InputStream in;

  Attacker(int port, Duration patience) {
    this.port = port;
    this.patience = patience;
  }

  /** Sends a request and waits for its answer; once more where the connection had been closed before. */
  Told send(Shot shot) throws IOException {
    boolean fresh = socket == null;
    try {
      return sendOnce(shot);
    } catch (IOException closed) {
      hangUp();
      if (fresh) {
        throw closed;
      }
      return sendOnce(shot);
    }
  }

  private Told sendOnce(Shot shot) throws IOException {
    if (socket == null) {
      socket = new Socket(InetAddress.getLoopbackAddress(), port);
      socket.setSoTimeout((int) patience.toMillis());
      socket.setTcpNoDelay(true);
      in = new BufferedInputStream(socket.getInputStream());
    }
    try {
      socket.getOutputStream().write(shot.bytes());
    } catch (IOException refusedWhileSending) {
      // The answer may be there all the same.
    }
    Told told = read(shot.method().equals("HEAD"));
    if ("close".equals(told.header().apply("Connection"))) {
      hangUp();
    }
    return told;
  }

  private Told read(boolean head) throws IOException {
    String[] status = line().split(" ", 3);
    Map<String, String> headers = new TreeMap<>(String.CASE_INSENSITIVE_ORDER);
    for (String line = line(); !line.isEmpty(); line = line()) {
      int colon = line.indexOf(':');
      headers.merge(
          line.substring(0, colon), line.substring(colon + 1).strip(), (a, b) -> a + ", " + b);
    }
    int code = Integer.parseInt(status[1]);
    byte[] body = head || code == 204 || code == 304 ? new byte[0] : body(headers);
    String type = Exchange.mediaType(headers.get("Content-Type"));
    return new Told(code, type, headers::get, new String(body, StandardCharsets.UTF_8));
  }

  private byte[] body(Map<String, String> headers) throws IOException {
    if ("chunked".equals(headers.get("Transfer-Encoding"))) {
      ByteArrayOutputStream all = new ByteArrayOutputStream();
      for (int size = size(); size > 0; size = size()) {
        all.writeBytes(exactly(size));
        line();
      }
      line();
      return all.toByteArray();
    }
    String length = headers.get("Content-Length");
    return length == null ? in.readAllBytes() : exactly(Integer.parseInt(length));
  }

  private int size() throws IOException {
    return Integer.parseInt(line(), 16);
  }

  private byte[] exactly(int size) throws IOException {
    byte[] bytes = in.readNBytes(size);
    if (bytes.length < size) {
      throw new EOFException("the answer ends early");
    }
    return bytes;
  }

  private String line() throws IOException {
    StringBuilder line = new StringBuilder();
    for (int b = in.read(); b != '\n'; b = in.read()) {
      if (b < 0) {
        throw new EOFException("closed without an answer");
      }
      line.append((char) b);
    }
    return line.toString().stripTrailing();
  }

  /** Ends the connection, if there is one. */
  void hangUp() {
    if (socket != null) {
      try {
        socket.close();
      } catch (IOException goneAlready) {
        // There is nothing left to end.
      }
      socket = null;
    }
  }
}
