package org.footwell.catalogue.input;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.footwell.catalogue.row.CannotRun;
import org.footwell.catalogue.row.Row;

/**
 * Rows that are sent together. A chunk stays under the size up to which the service reads a batch
 * whole before it answers, so that it can be sent by a client that sends first and reads afterwards.
 */
public final class Chunk {

  /** Bytes of the largest row that the service takes. */
  static final int LARGEST_ROW = 1_000_000;

  /** With one more row at most twice that, under the 2 MiB of the service. */
  private static final int FULL = 1_000_000;

  private final List<Row> rows = new ArrayList<>();
  private final ByteArrayOutputStream body = new ByteArrayOutputStream();
  private final List<Row> sent = new ArrayList<>();

  private Chunk() {}

  /** The next rows of a catalogue, at most so many; null after the last one. */
  public static Chunk of(Catalogue catalogue, int mostRows) throws IOException, CannotRun {
    Chunk chunk = new Chunk();
    while (chunk.rows.size() < mostRows && chunk.body.size() < FULL) {
      Row row = catalogue.next();
      if (row == null) {
        break;
      }
      chunk.add(row);
    }
    return chunk.rows.isEmpty() ? null : chunk;
  }

  private void add(Row row) {
    byte[] json = row.json() == null ? null : row.json().getBytes(StandardCharsets.UTF_8);
    if (json == null) {
      rows.add(row);
    } else if (json.length > LARGEST_ROW) {
      String why = "The row is larger than " + LARGEST_ROW + " bytes.";
      rows.add(Row.refused(row.line(), row.part(), "too-large", why));
    } else {
      body.writeBytes(json);
      body.write('\n');
      sent.add(row);
      rows.add(row);
    }
  }

  public List<Row> rows() {
    return rows;
  }

  /** One JSON object a line for each row that can be sent. */
  public byte[] body() {
    return body.toByteArray();
  }

  /** The rows that the body holds. */
  public List<Row> sent() {
    return sent;
  }

  /** Where it stands in the file, in words. */
  public String lines() {
    return "lines " + rows.get(0).line() + " to " + rows.get(rows.size() - 1).line();
  }
}
