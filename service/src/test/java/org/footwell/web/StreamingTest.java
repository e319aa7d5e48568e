package org.footwell.web;

import static java.util.concurrent.TimeUnit.SECONDS;
import static org.footwell.web.SoundLevelCalls.GOOD;
import static org.footwell.web.SoundLevelCalls.HEADER;
import static org.footwell.web.SoundLevelCalls.PATH;
import static org.footwell.web.SoundLevelCalls.ROW;
import static org.footwell.web.SoundLevelCalls.with;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.extension.ExtendWith;

/** A slow sender sees the answer to each row before it sends the next. */
@ExtendWith(RunningServer.class)
@Timeout(value = 30, unit = SECONDS)
class StreamingTest {

  private static RawConnection open(String type) throws IOException {
    RawConnection connection = new RawConnection();
    connection.send(
        "POST "
            + PATH
            + "/batch HTTP/1.1\r\nHost: localhost\r\nContent-Type: "
            + type
            + "\r\nTransfer-Encoding: chunked\r\n\r\n");
    return connection;
  }

  @Test
  void eachLineIsAnsweredBeforeTheNextIsSent() throws IOException {
    try (RawConnection connection = open("application/x-ndjson")) {
      for (String power : new String[] {"1", "10", "100"}) {
        connection.sendChunk(with("power_w", power) + "\n");
        String answer = connection.readUntil("\"]}\n");
        assertTrue(answer.contains("\"driver_power_w\":" + power + ".0"), answer);
      }
      connection.sendChunk("{\n");
      String problem = connection.readUntil("\"line\":4}\n");
      assertTrue(problem.contains("\"status\":400"), problem);
      connection.send("0\r\n\r\n");
      connection.readUntil("0\r\n\r\n");
    }
  }

  @Test
  void eachEntryOfAnArrayIsAnsweredBeforeTheNextIsSent() throws IOException {
    try (RawConnection connection = open("application/json")) {
      connection.sendChunk("[" + GOOD);
      connection.readUntil("\"]}");
      connection.sendChunk("," + with("power_w", "1"));
      String answer = connection.readUntil("\"]}");
      assertTrue(answer.contains("\"driver_power_w\":1.0"), answer);
      connection.sendChunk("]");
      connection.send("0\r\n\r\n");
      connection.readUntil("]\r\n0\r\n\r\n");
    }
  }

  @Test
  void eachRowInCsvIsAnsweredBeforeTheNextIsSent() throws IOException {
    try (RawConnection connection = open("text/csv")) {
      connection.sendChunk(HEADER + "\n" + ROW + "\n");
      connection.readUntil("exposure-unknown,\n");
      connection.sendChunk("90,one_watt,8,1\n");
      String answer = connection.readUntil("exposure-unknown,\n");
      assertTrue(answer.contains("90,one_watt,8,1,90.0,"), answer);
      connection.send("0\r\n\r\n");
      connection.readUntil("0\r\n\r\n");
    }
  }
}
