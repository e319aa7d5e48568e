package org.footwell.electrical.impedance;

import io.swagger.v3.oas.annotations.media.Schema;
import org.footwell.calculation.Built;

/**
 * A driver's parameters from its measured impedance. Each confidence is half the width of the 95 %
 * interval, of the value in percent.
 */
@Built
public record ImpedanceFitResult(
    @Schema(description = "DC resistance, ohm; as given when it was given") double reOhm,
    @Schema(description = "Its 95 % confidence, ±%; none when it was given")
        Double reConfidencePercent,
    @Schema(description = "Inductance at 1000 Hz, mH; none when the readings do not show it")
        Double leMh,
    @Schema(description = "Its 95 % confidence, ±%") Double leConfidencePercent,
    @Schema(description = "Exponent of the inductance; none when the readings do not show it")
        Double leExponent,
    @Schema(description = "Its 95 % confidence, ±%; none when it was not fitted")
        Double leExponentConfidencePercent,
    double fsHz,
    @Schema(description = "Its 95 % confidence, ±%") double fsConfidencePercent,
    double qms,
    @Schema(description = "Its 95 % confidence, ±%") double qmsConfidencePercent,
    double qes,
    @Schema(description = "Its 95 % confidence, ±%") double qesConfidencePercent,
    double qts,
    @Schema(description = "Modulus at resonance, re·(1 + qms/qes), ohm") double resonanceOhm,
    @Schema(description = "How far the model misses the moduli, RMS, %") double residualPercent,
    @Schema(description = "How far it misses the phases, RMS, degrees") Double residualPhaseDeg,
    @Schema(description = "Farthest miss of a modulus, %") double largestResidualPercent,
    @Schema(description = "Where it is, Hz") double largestResidualHz,
    @Schema(description = "What the table with the added mass gave") WithMass withMass,
    @Schema(description = "What the table in the box gave") InBox inBox,
    Double mmsG,
    Double cmsMmPerN,
    Double vasL,
    Double blTm) {

  /** The driver with the added mass. */
  public record WithMass(
      @Schema(description = "Resonance with the mass, Hz") double resonanceHz,
      @Schema(description = "Mechanical Q with the mass") double qms,
      @Schema(description = "Electrical Q with the mass") double qes,
      @Schema(description = "How far the model misses the moduli, RMS, %") double residualPercent,
      @Schema(
              description =
                  "95 % confidence of the moving mass, ±%; the weighing of the mass not included")
          double mmsConfidencePercent) {}

  /** The driver in the closed box. */
  public record InBox(
      @Schema(description = "Resonance in the box, Hz") double resonanceHz,
      @Schema(description = "Mechanical Q in the box") double qmc,
      @Schema(description = "Electrical Q in the box") double qec,
      @Schema(description = "How far the model misses the moduli, RMS, %") double residualPercent,
      @Schema(description = "95 % confidence of vas, ±%; the volume's own error not included")
          double vasConfidencePercent) {}
}
