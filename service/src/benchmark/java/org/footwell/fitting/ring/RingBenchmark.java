package org.footwell.fitting.ring;

import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.footwell.fitting.ring.drawing.DrawnRing;
import org.footwell.fitting.ring.drawing.DxfDrawing;
import org.footwell.fitting.ring.drawing.StlFile;
import org.footwell.fitting.ring.drawing.SvgDrawing;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Solid and drawings of the rings that other programs have read. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class RingBenchmark {

  @Param({"round", "oval-driver", "holes-break-edge", "finest"})
  public String ring;

  private DrawnRing drawn;

  @Setup
  public void prepare() {
    Map<String, DrawnRing> all = RingCases.all();
    if (ring.equals("finest")) {
      RingDraft draft = new RingDraft();
      draft.ring.arcToleranceMm(0.01);
      draft.opening.holes(RingDraft.circle(16, 174, 90));
      draft.driver.holes(RingDraft.circle(16, 156, 90));
      all.put(ring, draft.drawn());
    }
    drawn = all.get(ring);
  }

  @Benchmark
  public byte[] stl() {
    return StlFile.of(drawn);
  }

  @Benchmark
  public byte[] svg() {
    return SvgDrawing.of(drawn);
  }

  @Benchmark
  public byte[] dxf() {
    return DxfDrawing.of(drawn);
  }
}
