package org.footwell.acoustic.enclosure.lowend;

import io.swagger.v3.oas.annotations.media.Schema;

/** The low end of a driver in a box, the inductance of its coil left out. */
public record BoxResponse(
    @Schema(
            description =
                "Level well above all resonances at 1 m in half space at the stated drive, dB SPL:"
                    + " what f3, f10 and peak are counted from")
        double referenceLevelDbSpl,
    @Schema(
            description =
                "Highest frequency at which the response has fallen to half the power, −3.01 dB, Hz")
        Double f3Hz,
    @Schema(description = "Highest frequency at which it has fallen by 10 dB, Hz") Double f10Hz,
    @Schema(description = "Highest point of the response over the reference, dB; 0 without a peak")
        double peakDb,
    @Schema(description = "Where the peak is, Hz; absent without one") Double peakHz) {}
