package org.footwell.web;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;

/** A plain socket to the service, for what no well-behaved client would send. */
final class RawConnection implements AutoCloseable {

  private static final int PATIENCE_MS = 10_000;

  private final Socket socket;

  RawConnection() throws IOException {
    this(RunningServer.port());
  }

  RawConnection(int port) throws IOException {
    socket = new Socket(InetAddress.getLoopbackAddress(), port);
    socket.setSoTimeout(PATIENCE_MS);
  }

  void send(String text) throws IOException {
    socket.getOutputStream().write(text.getBytes(StandardCharsets.ISO_8859_1));
    socket.getOutputStream().flush();
  }

  /** Sends text as one chunk of a chunked body. */
  void sendChunk(String text) throws IOException {
    int length = text.getBytes(StandardCharsets.UTF_8).length;
    send(Integer.toHexString(length) + "\r\n" + text + "\r\n");
  }

  void sendChunk(byte[] bytes) throws IOException {
    send(Integer.toHexString(bytes.length) + "\r\n");
    socket.getOutputStream().write(bytes);
    send("\r\n");
  }

  /** What stands in the chunks that come. */
  InputStream chunks() throws IOException {
    InputStream in = socket.getInputStream();
    return new InputStream() {
      private int left;
      private boolean first = true;

      @Override
      public int read() throws IOException {
        if (left == 0) {
          if (!first) {
            in.skipNBytes(2);
          }
          first = false;
          StringBuilder length = new StringBuilder();
          for (int c = in.read(); c != '\r'; c = in.read()) {
            length.append((char) c);
          }
          in.skipNBytes(1);
          left = Integer.parseInt(length.toString(), 16);
        }
        return left-- == 0 ? -1 : in.read();
      }

      @Override
      public int read(byte[] into, int offset, int length) throws IOException {
        int next = read();
        if (next >= 0) {
          into[offset] = (byte) next;
        }
        return next < 0 ? -1 : 1;
      }
    };
  }

  /** Says that nothing more will come, and keeps listening. */
  void endSending() throws IOException {
    socket.shutdownOutput();
  }

  /** Reads up to and with the text given; fails when it does not come within ten seconds. */
  String readUntil(String end) throws IOException {
    ByteArrayOutputStream read = new ByteArrayOutputStream();
    InputStream in = socket.getInputStream();
    while (!read.toString(StandardCharsets.UTF_8).endsWith(end)) {
      int b = in.read();
      if (b < 0) {
        throw new AssertionError("closed after: " + read.toString(StandardCharsets.UTF_8));
      }
      read.write(b);
    }
    return read.toString(StandardCharsets.UTF_8);
  }

  String readAll() throws IOException {
    return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
  }

  @Override
  public void close() throws IOException {
    socket.close();
  }

  /** Sends one request that closes its connection, and gives all that comes back. */
  static String answer(String request) {
    try (RawConnection connection = new RawConnection()) {
      connection.send(request);
      return connection.readAll();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** What follows the headers. */
  static String body(String answer) {
    return answer.substring(answer.indexOf("\r\n\r\n") + 4);
  }
}
