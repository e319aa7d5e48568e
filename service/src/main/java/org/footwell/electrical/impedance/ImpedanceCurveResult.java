package org.footwell.electrical.impedance;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.footwell.calculation.Built;
import org.footwell.calculation.Called;

/** The impedance of a driver over frequency. */
@Built
public record ImpedanceCurveResult(
    @Schema(description = "Resonance in free air or in the closed box, Hz; none in a vented box")
        Double resonanceHz,
    @Schema(
            description =
                "Modulus at that resonance, re·(1 + qms/qes), the inductance left out, ohm")
        Double resonanceOhm,
    @Schema(description = "Total Q in free air, the source without resistance") double qts,
    @Schema(description = "Mechanical Q in the closed box") Double qmc,
    @Schema(description = "Electrical Q in the closed box") Double qec,
    Double qtc,
    @Schema(description = "Peaks within the range, inductance included, rising in frequency")
        List<ModulusPoint> peaks,
    @Schema(description = "Dips within the range, rising in frequency") List<ModulusPoint> dips,
    @Schema(description = "Lowest modulus in the range, its ends included, ohm")
        double lowestModulusOhm,
    @Called("lowest_at_hz") @Schema(description = "Where it is, Hz") double lowestHz,
    @Schema(description = "80 % of the rated impedance, ohm") Double ratedLimitOhm,
    @Schema(description = "Whether the modulus keeps to 80 % of the rated impedance in the range")
        Boolean ratedKept,
    @Schema(description = "Highest rated impedance the modulus keeps to, ohm")
        double highestRatedOhm,
    @Schema(description = "The curve") List<Point> points) {

  /** One frequency of the curve. */
  public record Point(
      double frequencyHz,
      @Schema(description = "Modulus of the impedance, ohm") double modulusOhm,
      @Schema(description = "Phase of the impedance, degrees; positive when inductive")
          double phaseDeg) {}
}
