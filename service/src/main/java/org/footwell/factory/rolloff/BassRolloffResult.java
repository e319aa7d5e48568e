package org.footwell.factory.rolloff;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.footwell.calculation.Built;
import org.footwell.calculation.text.Words;

/** Where the bass falls behind, and what restores it. */
public record BassRolloffResult(
    @Schema(description = "Volume step the others are held against") int referenceStep,
    @Schema(description = "First volume step whose bass falls behind; absent if none does")
        Integer onsetStep,
    @Schema(description = "Largest loss of all volume steps, mean of three bands, dB")
        double largestLossDb,
    @Schema(description = "Below this frequency the bass falls behind at that step, Hz")
        Double largestLossBelowHz,
    @Schema(
            description =
                "Highest volume step up to which every loss can be restored in full; absent if"
                    + " there is nothing to restore")
        Integer fullUpToStep,
    @Schema(
            description =
                "Volume step from which on nothing can be restored: compensating must have ended;"
                    + " absent if that is not reached")
        Integer endsAtStep,
    @Schema(description = "All volume steps, rising") List<StepLoss> steps,
    @Schema(description = "Bass bands of all volume steps: what to give each of them")
        List<BandGain> bands) {

  /** One volume step. */
  @Built
  public record StepLoss(
      int volumeStep,
      @Schema(description = "Level of the reference range, dB, as the levels given")
          double referenceLevelDb,
      @Schema(
              description =
                  "How far the bass falls behind, dB: largest mean of three neighbouring bands;"
                      + " below 0 it is ahead")
          double lossDb,
      @Schema(description = "Whether that is a loss by the threshold and beyond chance")
          boolean behind,
      @Schema(description = "Below this frequency the loss reaches the threshold, Hz")
          Double belowHz,
      @Schema(description = "Gain of the low shelf that restores the bass in full, dB")
          double shelfGainDb,
      @Schema(
              description =
                  "Frequency of that shelf, second order with Q 0.7071: half its gain in dB is"
                      + " reached there, Hz")
          Double shelfFrequencyHz,
      @Schema(description = "Largest difference of the shelf from the loss of a band, dB")
          Double shelfErrorDb,
      @Schema(description = "Gain of the shelf that the limits allow, dB") double allowedGainDb,
      @Schema(description = "What holds the gain") HeldBy heldBy,
      @Schema(description = "One-way peak displacement with that gain, mm") Double displacementMm,
      @Schema(description = "What chance may do to a band's loss, 95 %, lowest band, dB")
          Double uncertaintyDb) {}

  /** What holds a gain. */
  public enum HeldBy implements Words {
    /** Nothing: the loss is restored in full. */
    NOTHING,
    /** The amplifier's headroom. */
    HEADROOM,
    /** The driver's displacement. */
    DISPLACEMENT,
    /** The most the equaliser can give. */
    MOST_GAIN
  }

  /** One band at one volume step. */
  public record BandGain(
      int volumeStep,
      @Schema(description = "Exact mid-band frequency, Hz") double frequencyHz,
      @Schema(description = "How far the band falls behind, dB") double lossDb,
      @Schema(description = "Gain that restores it as far as the limits allow, dB")
          double allowedGainDb) {}
}
