package org.footwell.web.upload;

import java.util.HashSet;
import java.util.Set;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import org.footwell.calculation.text.Phrase;
import org.footwell.recording.RecordingRules;
import org.footwell.web.request.ProblemException;
import org.footwell.web.request.ProblemType;
import org.footwell.web.request.ProblemWords;

/**
 * Memory for requests with recordings, shared by all of them, so that none is taken which the heap
 * cannot bear. One part holds what is sent, the other what is calculated with: whoever holds waits
 * for a calculation to end, and a calculation waits for nothing.
 */
final class UploadMemory {

  /**
   * What the largest transforms of any calculation take, bytes for each of their points: five double
   * values, counted in the deconvolution of a sweep, and confirmed within a tenth by the least heap
   * in which each calculation answers; see {@code docs/operating.md}.
   */
  static final int BYTES_A_POINT = 42;

  /** What passes a gate is transformed at twice its length, at most 2.2 s at 192 kHz. */
  private static final int MOST_GATED = 1 << 20;

  /** A number or a text that stands by itself in a request, with its place, about. */
  static final int BYTES_A_VALUE = 100;

  /** What the service takes besides, under the same measurement 12 to 28 MB. */
  private static final long OTHERWISE = 24L << 20;

  /** Share of the heap for what lives long, in the usual division of a heap. */
  private static final double LIVES_LONG = 2.0 / 3;

  /** Share of that for calculations at most. */
  private static final double FOR_WORK = 0.7;

  /** A share counts as whole from the start while it fills so fast, bytes a second. */
  private static final double BRISK = 1 << 20;

  private static final double START_S = 1;

  /** Unit in which memory for calculations is counted, bytes. */
  private static final long UNIT = 1024;

  private final int mostSamples;
  private final long mostHeld;
  private final long waitMs;
  private final Semaphore work;
  private final Set<Share> shares = new HashSet<>();

  /**
   * Divides a heap.
   *
   * @param heap its size, bytes
   * @param waitMs how long a calculation waits for others to end
   */
  UploadMemory(long heap, long waitMs) {
    this.waitMs = waitMs;
    double room = Math.max(0, heap * LIVES_LONG - OTHERWISE);
    int points = RecordingRules.MOST_SAMPLES;
    while (points > 1 && workBytes(points) > FOR_WORK * room) {
      points /= 2;
    }
    mostSamples = points;
    mostHeld = (long) (room - workBytes(points));
    work = new Semaphore((int) (workBytes(points) / UNIT), true);
  }

  /** Most samples of a recording that this heap can calculate with. */
  int mostSamples() {
    return mostSamples;
  }

  /** Most that all requests may hold together, bytes. */
  long mostHeld() {
    return mostHeld;
  }

  /** What a calculation takes besides the samples, by the longest recording. */
  private static long workBytes(int samples) {
    int points = Math.max(powerOfTwo(samples), powerOfTwo(Math.min(2 * samples, MOST_GATED)));
    return (long) BYTES_A_POINT * points;
  }

  /** The next power of two that is not smaller. */
  private static int powerOfTwo(int samples) {
    return Integer.highestOneBit(Math.max(1, 2 * samples - 1));
  }

  /**
   * Admits a request before it is read.
   *
   * @param stated size of the body, bytes; negative if it states none
   * @throws ProblemException if it does not fit beside those under way
   */
  Share share(long stated) {
    Share share = new Share(Math.min(mostHeld, heldBytes(stated)), stated / BRISK);
    synchronized (shares) {
      if (counted() + share.counted() > mostHeld) {
        throw busy();
      }
      shares.add(share);
    }
    return share;
  }

  /** What samples take when a body is all samples: four bytes for every two, and once for growing. */
  private static long heldBytes(long stated) {
    long samples = Math.max(0, stated) / 2;
    return Float.BYTES
        * (Math.min(samples, RecordingRules.MOST_SAMPLES_IN_ALL)
            + Math.min(samples, RecordingRules.MOST_SAMPLES));
  }

  private long counted() {
    return shares.stream().mapToLong(Share::counted).sum();
  }

  private static ProblemException busy() {
    return ProblemException.of(ProblemType.BUSY, ProblemWords.NO_MEMORY_BESIDE_OTHERS);
  }

  private ProblemException never(Phrase what) {
    return ProblemException.of(
        ProblemType.TOO_LARGE,
        Phrase.of(ProblemWords.HEAP_TOO_SMALL)
            .with("what", what)
            .with("samples", mostSamples)
            .with("all", mostHeld / Float.BYTES));
  }

  /** What one request may have of it. */
  final class Share implements AutoCloseable {
    private final long stated;
    private final double fillS;
    private final long begin = System.nanoTime();
    private boolean brisk;
    private long held;

    private Share(long stated, double fillS) {
      this.stated = stated;
      this.fillS = fillS;
      this.brisk = stated > 0;
    }

    /**
     * All that was stated, until it comes so slowly that others should not wait for it, or is there;
     * then what has come.
     */
    private long counted() {
      double s = (System.nanoTime() - begin) / 1e9;
      brisk = brisk && (s <= START_S || held * fillS >= stated * (s - START_S));
      return brisk ? Math.max(stated, held) : held;
    }

    /**
     * The request holds so much more.
     *
     * @throws ProblemException if there is no room for it
     */
    void hold(long more) {
      synchronized (shares) {
        held += more;
        if (held > mostHeld) {
          throw never(Phrase.of(ProblemWords.VALUES_OF_REQUEST));
        }
        boolean beyondStated = counted() > stated && UploadMemory.this.counted() > mostHeld;
        if (beyondStated || shares.stream().mapToLong(share -> share.held).sum() > mostHeld) {
          // What it held is for the others at once: of two that do not fit together one goes on.
          shares.remove(this);
          throw busy();
        }
      }
    }

    /**
     * Refuses a recording that no calculation here could bear, as soon as its length is known.
     *
     * @throws ProblemException if it is longer
     */
    void requireFits(long samples) {
      if (samples > mostSamples) {
        throw never(Phrase.of(ProblemWords.SAMPLES_IN_ONE).with("count", samples));
      }
    }

    /** The body is there. */
    private void settle() {
      synchronized (shares) {
        brisk = false;
      }
    }

    /**
     * Calculates when there is memory for it.
     *
     * @param longest samples of the longest recording
     * @throws ProblemException if others need it for too long
     */
    <T> T work(int longest, Supplier<T> task) {
      settle();
      requireFits(longest);
      int units = (int) (workBytes(longest) / UNIT);
      await(units);
      try {
        return task.get();
      } finally {
        work.release(units);
      }
    }

    private void await(int units) {
      try {
        if (work.tryAcquire(units, waitMs, TimeUnit.MILLISECONDS)) {
          return;
        }
      } catch (InterruptedException stopping) {
        Thread.currentThread().interrupt();
      }
      throw busy();
    }

    @Override
    public void close() {
      synchronized (shares) {
        shares.remove(this);
      }
    }
  }
}
