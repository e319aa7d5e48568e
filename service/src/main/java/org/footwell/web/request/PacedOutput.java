package org.footwell.web.request;

import java.io.IOException;
import java.io.OutputStream;
import org.eclipse.jetty.ee10.servlet.ServletContextRequest;
import org.eclipse.jetty.io.EndPoint;
import org.eclipse.jetty.util.thread.Scheduler;

/**
 * An answer whose connection is closed where its caller takes it too slowly. Only time spent waiting
 * for the caller counts, so that a long batch may take as long as its rows do.
 */
final class PacedOutput extends OutputStream {

  /** Written at a time: a wait for so much is a wait for the caller. */
  private static final int PORTION = 16 * 1024;

  private final OutputStream out;
  private final Waits waits;
  private final EndPoint endPoint;
  private final Scheduler scheduler;
  private long written;
  private long waitedNs;

  /** Writes the answer to a request. */
  PacedOutput(ServletContextRequest request, OutputStream out, Waits waits) {
    this.out = out;
    this.waits = waits;
    this.endPoint = request.getConnectionMetaData().getConnection().getEndPoint();
    this.scheduler = request.getConnectionMetaData().getConnector().getScheduler();
  }

  @Override
  public void write(int b) throws IOException {
    write(new byte[] {(byte) b});
  }

  @Override
  public void write(byte[] bytes, int offset, int length) throws IOException {
    for (int at = offset; at < offset + length; at += PORTION) {
      int from = at;
      int portion = Math.min(PORTION, offset + length - at);
      written += portion;
      timed(() -> out.write(bytes, from, portion));
    }
  }

  @Override
  public void flush() throws IOException {
    timed(out::flush);
  }

  @Override
  public void close() throws IOException {
    timed(out::close);
  }

  private void timed(Waits.Write write) throws IOException {
    long left = Math.max(0, waits.pace().within(written) - waitedNs);
    long before = waits.ns();
    try {
      waits.forTaking(write, left, endPoint, scheduler);
    } finally {
      waitedNs += waits.ns() - before;
    }
  }
}
