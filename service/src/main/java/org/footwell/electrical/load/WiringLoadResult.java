package org.footwell.electrical.load;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.footwell.calculation.Built;

/** The load a network is, and who gets what of it. */
@Built
public record WiringLoadResult(
    @Schema(
            description =
                "Rated load at the network's terminals, ohm, without the cable; with bands, the"
                    + " lowest of them")
        double loadOhm,
    @Schema(
            description =
                "Lowest modulus of impedance to expect in the rated range, ohm: 80 % of the rated"
                    + " load (IEC 60268-5)")
        double lowestModulusOhm,
    @Schema(description = "Load in each band of a passive crossover, when bands are given")
        List<BandLoad> bands,
    @Schema(
            description =
                "What a multimeter should show at the network's terminals, ohm; when re_ohm is"
                    + " known of every coil in use and there are no bands")
        Double meterReadingOhm,
    @Schema(description = "What it should show at the amplifier's end of the cable, ohm")
        Double meterReadingWithCableOhm,
    @Schema(description = "The coils in use, in the order of the network") List<CoilShare> coils,
    @Schema(description = "Whether all coils of a band take the same power, and all its drivers")
        boolean evenSharing,
    @Schema(description = "Rated load each half of a bridge sees, ohm; when bridged")
        Double halfLoadOhm,
    Double cableOhm,
    @Schema(description = "Rated load with the cable, ohm, as the amplifier sees it")
        Double loadWithCableOhm,
    @Schema(description = "Level lost in the cable, dB; 0 would be none") Double cableLossDb,
    @Schema(
            description =
                "Rated load over output_ohm plus cable. Without output_ohm it is the limit that the"
                    + " cable alone sets; absent when there is neither")
        Double dampingFactor,
    @Schema(
            description =
                "RMS current at voltage_v into the lowest modulus plus cable, A; when voltage_v is"
                    + " given")
        Double currentAtLowestModulusA,
    @Schema(description = "Peak of that current for a sine, A") Double peakCurrentA) {

  /** The load in one band. */
  public record BandLoad(
      @Schema(description = "Name of the band") String band,
      @Schema(description = "Rated load in the band, ohm") double loadOhm) {}

  /** What one coil takes. */
  public record CoilShare(
      @Schema(description = "Name of the coil, or its place in the network when it has none")
          String name,
      @Schema(description = "Driver the coil belongs to, when given") String driver,
      @Schema(description = "Band the coil plays in, when given") String band,
      @Schema(description = "Rated impedance of the coil, ohm") double ratedOhm,
      @Schema(
              description =
                  "Power of the coil over the power of the network; the shares of a band add up to"
                      + " 1")
          double powerShare,
      @Schema(
              description =
                  "Voltage across the coil over the voltage across the network; 1 for coils in"
                      + " parallel to its terminals")
          double voltageShare) {}
}
