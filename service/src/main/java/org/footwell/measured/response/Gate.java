package org.footwell.measured.response;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import org.footwell.calculation.Formula;
import org.footwell.calculation.Source;

/** Which part of an impulse response counts. */
public record Gate(
    @Schema(
            description =
                "How long before the strongest sample of the response the gate opens, ms; its first"
                    + " half fades in")
        @DecimalMin("0.1")
        @DecimalMax("200")
        Double beforeMs,
    @Schema(
            description =
                "How long after the strongest sample the gate closes, ms; its last quarter fades"
                    + " out. Nothing is told below 1000/after_ms Hz; a short gate leaves out"
                    + " reflections and bass with them")
        @DecimalMin("1")
        @DecimalMax("2000")
        Double afterMs) {

  /** Gate time against the lowest frequency. */
  public static final Source RESOLUTION =
      Source.of("Resolution of a Fourier transform: the inverse of the time it looks at");

  /** Lowest frequency, Hz, that a gate of a length in s can tell. */
  public static final Formula.Of1 LIMIT =
      Formula.of("gate_limit_hz", "1/T", "Hz", RESOLUTION).with("T", seconds -> 1 / seconds);

  public Gate {
    beforeMs = beforeMs == null ? Double.valueOf(20) : beforeMs;
    afterMs = afterMs == null ? Double.valueOf(400) : afterMs;
  }

  /** All of the response that matters in a cabin, bass included. */
  public static Gate standard() {
    return new Gate(null, null);
  }
}
