package org.footwell.web;

import java.io.BufferedOutputStream;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.net.Socket;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * A caller that reads while it sends: numbered rows of CSV over a plain socket. The request is one of
 * HTTP/1.0, so that the answer is its bare lines up to the end of the connection.
 */
public final class RowsOverSocket implements AutoCloseable {

  private static final int PATIENCE_MS = 60_000;

  /** Of "0000000," before every row, which keeps the length of the body known beforehand. */
  private static final int NUMBER_BYTES = 8;

  private final Socket socket;
  private final BufferedReader answer;
  private final AtomicInteger sent = new AtomicInteger();
  private final Thread sender;

  /**
   * Starts to send.
   *
   * @param lines a header and rows, in ASCII; the rows are repeated as often as it takes
   * @param count how many rows to send
   */
  public RowsOverSocket(URI service, String target, List<String> lines, int count)
      throws IOException {
    socket = new Socket(service.getHost(), service.getPort());
    socket.setSoTimeout(PATIENCE_MS);
    answer =
        new BufferedReader(
            new InputStreamReader(socket.getInputStream(), StandardCharsets.US_ASCII), 1 << 16);
    OutputStream out = new BufferedOutputStream(socket.getOutputStream(), 1 << 16);
    sender = new Thread(() -> send(out, target, lines, count), "sender");
    sender.setDaemon(true);
    sender.start();
    while (!answer.readLine().isEmpty()) {
      // headers of the answer
    }
  }

  private void send(OutputStream out, String target, List<String> lines, int count) {
    List<String> rows = lines.subList(1, lines.size());
    String header = "row," + lines.get(0) + "\n";
    long length = header.length();
    for (int i = 0; i < count; i++) {
      length += NUMBER_BYTES + rows.get(i % rows.size()).length() + 1;
    }
    try {
      write(
          out,
          "POST %s HTTP/1.0\r\nContent-Type: text/csv\r\nContent-Length: %d\r\n\r\n%s"
              .formatted(target, length, header));
      for (int i = 0; i < count; i++) {
        String number = Integer.toString(10_000_000 + i).substring(1);
        write(out, number + "," + rows.get(i % rows.size()) + "\n");
        sent.set(i + 1);
      }
      out.flush();
    } catch (IOException serviceIsGone) {
      sent.set(-1);
    }
  }

  private static void write(OutputStream out, String text) throws IOException {
    out.write(text.getBytes(StandardCharsets.US_ASCII));
  }

  /** How many rows were handed over so far. */
  public int sent() {
    return sent.get();
  }

  /** The next line of the answer, null after the last. */
  public String readLine() throws IOException {
    return answer.readLine();
  }

  @Override
  public void close() throws IOException {
    socket.close();
  }
}
