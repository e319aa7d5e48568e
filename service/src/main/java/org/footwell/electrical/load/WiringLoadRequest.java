package org.footwell.electrical.load;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Pattern;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.footwell.calculation.Built;

/** A network of voice coils, and what drives it. */
@Built
public record WiringLoadRequest(
    @Schema(
            description =
                "The network in circuit notation: + in series, || in parallel, parentheses. ||"
                    + " binds tighter than +, as a product binds tighter than a sum: 4+4||4 is"
                    + " 4+(4||4). Each part is the rated impedance of a coil in ohm (0.1 to 1000)"
                    + " or the name of one of the coils; at most 32 coils and 64 parentheses deep."
                    + " In a URL write + as %2B and || as %7C%7C",
            example = "(4+4)||(4+4)")
        @NotNull
        @Size(min = 1, max = 2000)
        String network,
    @Schema(
            description =
                "Coils the network calls by name. A driver with two voice coils is two coils; one"
                    + " that the network does not use is left open")
        @Size(min = 1, max = 32)
        List<@NotNull Coil> coils,
    @Schema(description = "The amplifier channel, to judge the load by") Amplifier amplifier,
    @Schema(description = "The speaker cable from the amplifier to the network") Cable cable,
    @Schema(
            description =
                "RMS voltage at the amplifier's terminals, V, for the current to expect; bridged it"
                    + " is the voltage across the bridge")
        Double voltageV) {

  /** How a coil or a driver is named: as the network can write it. */
  static final String NAME = "[A-Za-z][A-Za-z0-9_.-]*";

  /** A band is in lower case only, so that no two names of one band differ by a capital. */
  static final String BAND = "[a-z][a-z0-9_.-]*";

  /** One voice coil. */
  @Built
  public record Coil(
      @Schema(
              description =
                  "Name in the network: a letter, then letters, digits and _ - . without spaces")
          @NotNull
          @Size(min = 1, max = 40)
          @Pattern(regexp = NAME)
          String name,
      @Schema(description = "Rated impedance of this coil alone, ohm") @NotNull Double ratedOhm,
      @Schema(description = "DC resistance of this coil alone, ohm") Double reOhm,
      @Schema(
              description =
                  "Name of the driver the coil belongs to; the coils of one driver share it. A coil"
                      + " without is a driver of its own")
          @Size(min = 1, max = 40)
          @Pattern(regexp = NAME)
          String driver,
      @Schema(
              description =
                  "Band in which a passive crossover drives the coil, such as low or high: coils of"
                      + " different bands do not load each other. Either every coil of the network"
                      + " has a band or none")
          @Size(min = 1, max = 40)
          @Pattern(regexp = BAND)
          String band) {}

  /** The amplifier channel. */
  @Built
  public record Amplifier(
      Double minimumOhm,
      @Schema(description = "Whether two channels drive the network as a bridge") Boolean bridged,
      @Schema(
              description =
                  "Smallest rated load bridged, ohm. Without it the half load each channel sees is"
                      + " held against minimum_ohm")
          Double minimumBridgedOhm,
      @Schema(
              description =
                  "Output impedance as connected, ohm: bridged, that of the whole bridge. Not the"
                      + " sag of the supply")
          Double outputOhm) {

    public Amplifier {
      bridged = bridged == null ? Boolean.FALSE : bridged;
    }
  }

  /** The speaker cable, of plain copper. */
  public record Cable(
      @Schema(description = "Length from the amplifier to the network, one way, m") @NotNull
          Double oneWayM,
      @NotNull Double areaMm2,
      @Schema(description = "Temperature of the conductor, °C")
          @DecimalMin("-40")
          @DecimalMax("150")
          Double temperatureC) {

    public Cable {
      temperatureC = temperatureC == null ? Double.valueOf(20) : temperatureC;
    }
  }
}
