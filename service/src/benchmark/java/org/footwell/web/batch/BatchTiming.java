package org.footwell.web.batch;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.Arrays;
import java.util.Locale;

/**
 * Processor time a row of {@link BatchBenchmark}, which a busy machine does not falsify: of answering,
 * and of copying the answer. Rounds of all take turns; of each it prints the median in µs a row, first of processor
 * time, then by the clock.
 * Arguments: calculation, digits or 0 for all.
 */
public final class BatchTiming {

  private static final int WARM = 80;
  private static final int ROUNDS = 41;
  private static final String[] NAMES = {
    "copyAnswer", "readAskedWriteAnswer", "answeredOnOneCore", "answeredOnTwoCores"
  };
  private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

  private interface Round {
    void run() throws IOException;
  }

  private BatchTiming() {}

  public static void main(String[] arguments) throws IOException {
    BatchBenchmark batch = new BatchBenchmark();
    batch.id = arguments[0];
    batch.digits = Integer.parseInt(arguments[1]);
    batch.prepare();
    report(batch);
    batch.stop();
  }

  /** Of all threads that run Java, not of those that compile or collect, ns. */
  private static long processor() {
    return Arrays.stream(THREADS.getAllThreadIds()).map(THREADS::getThreadCpuTime).sum();
  }

  private static void report(BatchBenchmark batch) throws IOException {
    Round[] rounds = {
      batch::copyAnswer, batch::readAskedWriteAnswer, batch::answeredOnOneCore, batch::answeredOnTwoCores
    };
    double[][] processor = new double[rounds.length][ROUNDS];
    double[][] wall = new double[rounds.length][ROUNDS];
    for (int i = -WARM; i < ROUNDS; i++) {
      for (int j = 0; j < rounds.length; j++) {
        long before = processor();
        long begin = System.nanoTime();
        rounds[j].run();
        if (i >= 0) {
          wall[j][i] = (System.nanoTime() - begin) / 1e3 / BatchBenchmark.ROWS;
          processor[j][i] = (processor() - before) / 1e3 / BatchBenchmark.ROWS;
        }
      }
    }
    for (int j = 0; j < rounds.length; j++) {
      System.out.printf(
          Locale.ROOT, "%s %.3f %.3f%n", NAMES[j], median(processor[j]), median(wall[j]));
    }
  }

  private static double median(double[] values) {
    Arrays.sort(values);
    return values[values.length / 2];
  }
}
