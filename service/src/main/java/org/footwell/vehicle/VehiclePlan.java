package org.footwell.vehicle;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.Digits;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Pattern;
import jakarta.validation.constraints.Size;
import java.math.BigDecimal;
import java.util.List;
import org.footwell.calculation.rule.ExactlyOne;
import org.footwell.calculation.rule.Needed;
import org.footwell.calculation.rule.Without;
import org.footwell.parts.Cable;
import org.footwell.parts.Crossover;
import org.footwell.parts.Filter;
import org.footwell.parts.Money;
import org.footwell.parts.Position;
import org.footwell.parts.Processor;
import org.footwell.parts.Rails;
import org.footwell.parts.Ratings;
import org.footwell.parts.Seat;
import org.footwell.parts.Sensitivity;
import org.footwell.parts.Stage;

/** A vehicle, its parts and how they hang together; parts are listed once and referred to by id. */
@Needed("seats.*.name")
public record VehiclePlan(
    @Schema(description = "The vehicle") @NotNull Vehicle vehicle,
    @Schema(description = "Listening positions; levels are given for the one of largest weight")
        @NotNull
        @Size(min = 1, max = 8)
        List<@NotNull Seat> seats,
    @Schema(description = "Drivers that leave the vehicle") @Size(max = 64)
        List<@NotNull Part> factoryParts,
    @Schema(description = "Drivers that come in, or stay") @NotNull @Size(min = 1, max = 64)
        List<@NotNull Part> newParts,
    @Schema(description = "Every loudspeaker position and the part in it")
        @NotNull
        @Size(min = 1, max = 32)
        List<@NotNull Driver> drivers,
    @Schema(description = "Amplifiers with their outputs") @NotNull @Size(min = 1, max = 8)
        List<@NotNull Amplifier> amplifiers,
    @Schema(description = "Which coil network hangs on which output")
        @NotNull
        @Size(min = 1, max = 16)
        List<@NotNull Channel> channels,
    @Schema(description = "Where channels cross over into each other") @Size(max = 32)
        List<@NotNull Crossover> crossovers,
    @Schema(description = "The processor that delays the channels") Processor processor,
    @Schema(description = "What feeds the amplifiers, for the gain targets") Signal signal,
    @Schema(description = "What is played; without it a sine") Programme programme,
    @Schema(description = "What was measured at handover, one entry per channel") @Size(max = 16)
        List<@NotNull MeasuredChannel> measured) {

  /** Ids are a letter, then letters, digits, _ and -. */
  static final String ID = "[A-Za-z][A-Za-z0-9_-]*";

  public VehiclePlan {
    factoryParts = factoryParts == null ? List.of() : factoryParts;
    crossovers = crossovers == null ? List.of() : crossovers;
    measured = measured == null ? List.of() : measured;
  }

  /** The vehicle. */
  public record Vehicle(
      @Schema(description = "What it is called") @NotNull @Size(min = 1, max = 80) String name,
      @NotNull Double cabinLengthM,
      Double temperatureC,
      Double roadNoiseDba) {

    public Vehicle {
      temperatureC = temperatureC == null ? Double.valueOf(20) : temperatureC;
    }
  }

  /** A driver as its data sheet has it. */
  @Needed({
    "impedance.re_ohm",
    "impedance.le_mh",
    "impedance.fs_hz",
    "impedance.qms",
    "impedance.qes"
  })
  @Without({
    "impedance.rated_ohm",
    "impedance.sd_cm2",
    "impedance.xmax_mm",
    "impedance.sensitivity",
    "impedance.continuous_power_w",
    "impedance.mass_g",
    "impedance.price"
  })
  public record Part(
      @Schema(description = "Id, unique among all parts")
          @NotNull
          @Size(min = 1, max = 40)
          @Pattern(regexp = ID)
          String id,
      @Schema(description = "What it is called") @Size(min = 1, max = 80) String name,
      @Schema(description = "Rated impedance of one voice coil, ohm") @NotNull Double ratedOhm,
      Integer coilCount,
      @Schema(description = "DC resistance of one voice coil, ohm") Double reOhm,
      @Schema(
              description =
                  "What decides the impedance of one voice coil over frequency; with it the lowest"
                      + " load of a channel is given")
          org.footwell.parts.Driver impedance,
      @Schema(
              description =
                  "Effective cone area, cm²; with impedance for crossovers, with xmax_mm for the"
                      + " largest level")
          Double sdCm2,
      Double xmaxMm,
      @Schema(description = "Sensitivity, all voice coils driven") Sensitivity sensitivity,
      @Schema(
              description =
                  "Impedance the sensitivity was stated for, ohm; rated_ohm when not given")
          @DecimalMin("0.5")
          @DecimalMax("600")
          Double sensitivityOhm,
      @Schema(description = "Power the whole driver bears continuously, W") Double continuousPowerW,
      Double massG,
      @Schema(description = "Price in the shop's currency")
          @Digits(integer = Money.MOST_DIGITS, fraction = Money.FINEST)
          BigDecimal price) {

    public Part {
      coilCount = coilCount == null ? Integer.valueOf(1) : coilCount;
      price = Money.plain(price);
    }

    /** The load the sensitivity is for: no default, or a faulty rated load would be told twice. */
    double sensitivityLoad() {
      return sensitivityOhm == null ? ratedOhm : sensitivityOhm;
    }
  }

  /** A part in its place. */
  public record Driver(
      @Schema(
              description =
                  "Id; the network calls its voice coil so, or id.1, id.2 when it has several")
          @NotNull
          @Size(min = 1, max = 30)
          @Pattern(regexp = ID)
          String id,
      @Schema(description = "Id of the part in it, among new_parts")
          @NotNull
          @Size(min = 1, max = 40)
          String part,
      @Schema(description = "Id of the part it replaces, among factory_parts")
          @Size(min = 1, max = 40)
          String replaces,
      @Schema(description = "Where it is, in vehicle axes") @NotNull Position position,
      @Schema(
              description =
                  "Band a passive crossover gives it, such as low or high; either all drivers of a"
                      + " channel have one or none")
          @Size(min = 1, max = 20)
          @Pattern(regexp = "[a-z][a-z0-9_-]*")
          String band,
      @Schema(
              description =
                  "High-pass its passive crossover gives it, to judge how far its cone moves")
          Filter highPass,
      @Schema(description = "What its back works into, to judge bass and movement")
          Enclosure enclosure) {}

  /** An amplifier. */
  public record Amplifier(
      @Schema(description = "Id") @NotNull @Size(min = 1, max = 40) @Pattern(regexp = ID) String id,
      @Schema(description = "What it is called") @Size(min = 1, max = 80) String name,
      Boolean supplyRegulated,
      @Schema(description = "How it turns supply into output; with feed, for current and heat")
          AmplifierSupply.Draw draw,
      @Schema(description = "Its supply cable; with draw, for cable and fuse")
          AmplifierSupply.Feed feed,
      @Schema(description = "Its outputs") @NotNull @Size(min = 1, max = 16)
          List<@NotNull Output> outputs,
      Double massG,
      @Schema(description = "Price in the shop's currency")
          @Digits(integer = Money.MOST_DIGITS, fraction = Money.FINEST)
          BigDecimal price) {

    public Amplifier {
      supplyRegulated = supplyRegulated == null ? Boolean.FALSE : supplyRegulated;
      price = Money.plain(price);
    }
  }

  /** One output of an amplifier. */
  @ExactlyOne({"rails", "ratings"})
  public record Output(
      @Schema(description = "Id within the amplifier")
          @NotNull
          @Size(min = 1, max = 40)
          @Pattern(regexp = "[A-Za-z0-9][A-Za-z0-9_-]*")
          String id,
      @Schema(description = "By its rails") Rails rails,
      @Schema(description = "By its published powers") Ratings ratings,
      Double minimumOhm,
      Double minimumBridgedOhm,
      Double outputOhm,
      @Schema(
              description =
                  "Range of its gain control, by the input that gives its largest clean output;"
                      + " with signal, for the gain target")
          Stage.Sensitivity sensitivity) {

    /** Whether another output is the same in everything but its id. */
    boolean isLike(Output other) {
      return equals(
          new Output(
              id,
              other.rails,
              other.ratings,
              other.minimumOhm,
              other.minimumBridgedOhm,
              other.outputOhm,
              other.sensitivity));
    }
  }

  /** Where in the sound stage a channel plays. */
  public enum Role {
    FRONT,
    CENTRE,
    REAR,
    SUBWOOFER
  }

  /** A coil network on an output, or on two of them bridged. */
  @Needed({"cable.one_way_m", "cable.area_mm2"})
  public record Channel(
      @Schema(description = "Id") @NotNull @Size(min = 1, max = 40) @Pattern(regexp = ID) String id,
      @Schema(description = "Where it plays") @NotNull Role role,
      @Schema(description = "Id of the amplifier") @NotNull @Size(min = 1, max = 40)
          String amplifier,
      @Schema(description = "Id of the output, or of the two that are bridged")
          @NotNull
          @Size(min = 1, max = 2)
          List<@NotNull @Size(min = 1, max = 40) String> outputs,
      @Schema(
              description =
                  "Network of voice coils, by the ids of drivers: + in series, || in parallel,"
                      + " parentheses")
          @NotNull
          @Size(min = 1, max = 2000)
          String network,
      @Schema(description = "Speaker cable") Cable cable,
      Filter highPass,
      Filter lowPass,
      Boolean fullRange,
      Integer polarity,
      Double chainDelayMs,
      @Schema(description = "Filters of its equaliser, for the setup sheet")
          @Size(min = 1, max = 32)
          List<@NotNull ParametricFilter> filters) {

    public Channel {
      fullRange = fullRange == null ? Boolean.FALSE : fullRange;
      polarity = polarity == null ? Integer.valueOf(1) : polarity;
      chainDelayMs = chainDelayMs == null ? Double.valueOf(0) : chainDelayMs;
    }

    boolean bridged() {
      return outputs.size() == 2;
    }
  }

  /** What is played. */
  public record Programme(
      @Schema(
              description =
                  "Peak over RMS, dB: at the clip point the average power is that much below the"
                      + " peak. A sine has 3.01, music 10 to 20")
          @NotNull
          Double crestFactorDb,
      @Schema(description = "A-weighted minus unweighted level of it, dB") Double aWeightingDb) {}
}
