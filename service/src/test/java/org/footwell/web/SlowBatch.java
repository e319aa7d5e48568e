package org.footwell.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;

/** A batch in lines of JSON whose rows come one by one, each sent when the one before is answered. */
final class SlowBatch implements AutoCloseable {

  private final RawConnection connection;
  private final StringBuilder answer = new StringBuilder();
  private int rows;

  SlowBatch(int port) throws IOException {
    connection = new RawConnection(port);
    connection.send(
        "POST "
            + SoundLevelCalls.PATH
            + "/batch HTTP/1.1\r\nHost: localhost\r\nContent-Type: application/x-ndjson\r\n"
            + "Transfer-Encoding: chunked\r\n\r\n");
    row();
  }

  /** Sends a row and waits for its answer. */
  void row() throws IOException {
    connection.sendChunk(SoundLevelCalls.GOOD + "\n");
    rows++;
    answer.append(connection.readUntil("\"]}\n"));
  }

  /** Ends the batch, of which nothing may be missing: not a row, nor the chunk that says so. */
  String whole() throws IOException {
    connection.send("0\r\n\r\n");
    String rest = connection.readUntil("0\r\n\r\n");
    answer.append(rest);
    assertEquals("\r\n0\r\n\r\n", rest);
    assertTrue(answer.toString().startsWith("HTTP/1.1 200 "), answer::toString);
    assertEquals(rows, answer.toString().split("\"level_db_spl\":100\\.0", -1).length - 1);
    return answer.toString();
  }

  /** Reads to the end of what the service still sends by itself. */
  String rest() throws IOException {
    return connection.readAll();
  }

  @Override
  public void close() throws IOException {
    connection.close();
  }
}
