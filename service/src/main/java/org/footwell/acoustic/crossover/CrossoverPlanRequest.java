package org.footwell.acoustic.crossover;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.footwell.calculation.Built;
import org.footwell.calculation.Keeps;
import org.footwell.calculation.rule.Ascending;
import org.footwell.calculation.rule.Unique;
import org.footwell.parts.Filter;
import org.footwell.parts.PreferredSeries;

/** The ways of one side of a vehicle and what they are to do. */
@Built
@Unique("ways.*.id")
@Unique("orders.*")
@Ascending({"processor_lowest_hz", "processor_highest_hz"})
@Ascending({"pink_from_hz", "pink_to_hz"})
@Keeps(EvenOrders.class)
public record CrossoverPlanRequest(
    @Schema(description = "The ways from low to high, one driver each")
        @NotNull
        @Size(min = 2, max = 6)
        List<@NotNull CrossoverWay> ways,
    @Schema(
            description =
                "Level a sine must reach anywhere in the band, from one way alone, dB SPL (RMS) in"
                    + " half space. Peaks of the programme are as high as those of this sine")
        @NotNull
        @DecimalMin("60")
        @DecimalMax("140")
        Double wantedLevelDbSpl,
    @Schema(
            description =
                "Where it must be reached, m; 6 dB per doubling. In a cabin that law ends within a"
                    + " few tenths of a metre")
        @DecimalMin("0.1")
        @DecimalMax("20")
        Double distanceM,
    Double crestFactorDb,
    @Schema(description = "How the power of the programme is spread over frequency")
        ProgrammeKind programme,
    @Schema(description = "Lower end of pink programme, Hz; of no effect on the other kind")
        @DecimalMin("1")
        @DecimalMax("1000")
        Double pinkFromHz,
    @Schema(description = "Upper end of pink programme, Hz; of no effect on the other kind")
        @DecimalMin("1000")
        @DecimalMax("40000")
        Double pinkToHz,
    @Schema(
            description =
                "Clean sine power of the amplifier that drives all ways, W, for each way's part of"
                    + " it when the programme's peaks just reach clipping")
        @DecimalMin("1")
        @DecimalMax("20000")
        Double totalPowerW,
    @Schema(
            description =
                "Circumference over wavelength up to which the lower way's cone is used: at 2 the"
                    + " wavelength is 1.57 effective diameters")
        @DecimalMin("0.3")
        @DecimalMax("10")
        Double beamingKa,
    @Schema(description = "Largest distance of two ways' centres, in wavelengths at the crossover")
        @DecimalMin("0.1")
        @DecimalMax("10")
        Double spacingWavelengths,
    @Schema(description = "Highest crossover of a subwoofer, Hz: above it the ear finds its place")
        @DecimalMin("30")
        @DecimalMax("300")
        Double subwooferHighestHz,
    @Schema(description = "Kind of filter, electrical; a Bessel corner is its -3.01 dB point")
        Filter.Kind kind,
    @Schema(
            description =
                "Orders allowed, 6 dB per octave each; Linkwitz-Riley has even orders only")
        @Size(min = 1, max = 8)
        List<@NotNull @DecimalMin("1") @DecimalMax("8") Integer> orders,
    @Schema(description = "Lowest crossover the processor can be set to, Hz")
        @DecimalMin("5")
        @DecimalMax("20000")
        Double processorLowestHz,
    @Schema(description = "Highest crossover the processor can be set to, Hz")
        @DecimalMin("20")
        @DecimalMax("40000")
        Double processorHighestHz,
    Double temperatureC,
    @Schema(
            description =
                "A capacitor in series with the last way, which protects it when its amplifier has"
                    + " no passive filter behind it")
        Protection protection) {

  public CrossoverPlanRequest {
    distanceM = distanceM == null ? Double.valueOf(1) : distanceM;
    crestFactorDb = crestFactorDb == null ? Double.valueOf(12) : crestFactorDb;
    programme = programme == null ? ProgrammeKind.IEC_60268_1 : programme;
    pinkFromHz = pinkFromHz == null ? Double.valueOf(20) : pinkFromHz;
    pinkToHz = pinkToHz == null ? Double.valueOf(20000) : pinkToHz;
    beamingKa = beamingKa == null ? (Double) CrossoverScope.USUAL.beamingKa() : beamingKa;
    spacingWavelengths =
        spacingWavelengths == null
            ? (Double) CrossoverScope.USUAL.spacingWavelengths()
            : spacingWavelengths;
    subwooferHighestHz =
        subwooferHighestHz == null
            ? (Double) CrossoverScope.USUAL.subwooferHighestHz()
            : subwooferHighestHz;
    kind = kind == null ? CrossoverScope.USUAL.kind() : kind;
    orders = orders == null ? CrossoverScope.USUAL.orders() : orders;
    processorLowestHz =
        processorLowestHz == null
            ? (Double) CrossoverScope.USUAL.processorLowestHz()
            : processorLowestHz;
    processorHighestHz =
        processorHighestHz == null
            ? (Double) CrossoverScope.USUAL.processorHighestHz()
            : processorHighestHz;
    temperatureC = temperatureC == null ? Double.valueOf(20) : temperatureC;
  }

  /** How the power of a programme is spread. */
  public enum ProgrammeKind {
    /** The simulated programme signal: speech and music of several kinds, averaged. */
    IEC_60268_1,
    /** The same power in every octave. */
    PINK
  }

  /** A capacitor in series with the last way. */
  public record Protection(
      @Schema(
              description =
                  "Crossover frequency over that of the capacitor with the rated impedance: 2 is"
                      + " an octave below (common practice)")
          @DecimalMin("1")
          @DecimalMax("20")
          Double ratio,
      @Schema(description = "Series of preferred values it is taken from") PreferredSeries series) {

    public Protection {
      ratio = ratio == null ? Double.valueOf(2) : ratio;
      series = series == null ? PreferredSeries.E6 : series;
    }
  }
}
