package org.footwell.vehicle;

import io.swagger.v3.oas.annotations.media.Schema;
import java.math.BigDecimal;
import java.util.List;
import org.footwell.acoustic.crossover.HighReason;
import org.footwell.acoustic.crossover.LowReason;
import org.footwell.calculation.Built;
import org.footwell.calculation.Called;
import org.footwell.calculation.Verdict;
import org.footwell.parts.Filter;
import org.footwell.parts.Terminals;
import org.footwell.parts.plan.ChannelRole;
import org.footwell.parts.plan.ParametricFilter;
import org.footwell.vehicle.chain.EngineState;
import org.footwell.vehicle.chain.Limit;

/** The plan, channel by channel, and the system as a whole; one state in all of it. */
@Built
public record PlanReviewResult(
    @Schema(description = "Seat that delays and trims are for: the one of largest weight")
        String mainSeat,
    @Schema(description = "One line per channel") List<ChannelLine> channels,
    @Schema(description = "One line per driver on a channel") List<DriverLine> drivers,
    @Schema(description = "One line per crossover") List<CrossoverLine> crossovers,
    @Schema(description = "Level of each group of channels, and how even it is")
        List<RoleLine> balance,
    @Schema(
            description =
                "How far all subwoofers together stand from all front channels together where both"
                    + " add in phase, dB: trims make every channel alone as loud, so that one"
                    + " subwoofer stands 6 dB below two fronts unless the target lifts it")
        Double bassStepDb,
    @Schema(description = "Mid-bands of the third octaves of every seat, Hz") List<Double> bandsHz,
    @Schema(description = "Level at each seat, in all and by band") List<SeatLine> seats,
    @Schema(description = "What the supply does while cruising, idling and with the engine off")
        List<SupplyLine> supply,
    @Schema(description = "One line per amplifier whose draw and feed are given")
        List<CableLine> cables,
    @Schema(description = "What to set, what was set and what was measured, one line per channel")
        List<SetupLine> setupSheet,
    @Schema(
            description =
                "What would explain that measurements are not as predicted, best first; absent where"
                    + " they are, or where nothing explains half of it")
        List<CauseLine> causes,
    @Schema(
            description =
                "Level of all channels together at the main seat with the programme, dB SPL; absent"
                    + " when a sensitivity is")
        Double levelDbSpl,
    @Schema(description = "The same A-weighted, dBA") Double levelDba,
    @Schema(description = "A-weighted level above the road noise, dB") Double overRoadNoiseDb,
    @Schema(description = "Exposure allowed per day at this level by NIOSH 98-126, h")
        Double exposureAllowedH,
    @Schema(description = "The loudest it plays with nothing beyond its limits")
        LargestLine largest,
    @Schema(description = "What cannot be judged, and what would have to be known for it")
        List<NotJudged> notJudged,
    @Schema(description = "Before against after, one line per position a factory part leaves")
        List<ReplacementLine> replacements,
    @Schema(description = "One line per driver whose opening is given") List<FitLine> fits,
    @Schema(
            description =
                "How the vehicle gets back what it had when it left the factory, in order; absent where"
                    + " the plan names nothing of that")
        List<RestoreLine> restore,
    @Schema(
            description =
                "Mass that comes in less what goes out, g; absent when the mass of a part or"
                    + " amplifier is")
        Double massChangeG,
    @Schema(description = "Price of all that is new, extras included; absent when one has none")
        BigDecimal price,
    @Schema(description = "What the customer pays; where the plan has a quote") QuoteTotals quote) {

  /** One channel. */
  @Built
  public record ChannelLine(
      @Schema(description = "Id of the channel") String id,
      @Schema(description = "Where it plays") ChannelRole role,
      @Schema(description = "Rated load, ohm: with a passive crossover the lowest of its branches")
          double loadOhm,
      @Schema(
              description =
                  "Lowest modulus of the finished loudspeaker from 20 Hz to 20 kHz, ohm; where the"
                      + " drivers' data is there")
          Double lowestOhm,
      @Called("lowest_at_hz") @Schema(description = "Where it is, Hz") Double lowestHz,
      @Schema(description = "The same at the amplifier, with the cable, ohm")
          Double lowestWithCableOhm,
      @Schema(description = "Clean sine power into the rated load while cruising, W")
          double cleanPowerW,
      @Schema(
              description =
                  "How far the gain stays below the clip point so that it harms no driver, dB, 0"
                      + " or less")
          double gainReductionDb,
      @Schema(description = "What ends the gain") Limit gainHeldBy,
      @Schema(description = "RMS voltage to set with the test tone, V; where signal is given")
          Double gainTargetV,
      @Schema(description = "Trim, dB, 0 or less") double trimDb,
      @Schema(description = "Delay to add, ms, the smallest being 0") double delayMs,
      @Schema(description = "The same by the flight time alone, ms") double flightDelayMs,
      @Schema(description = "Mean power its amplifier gives with the programme, W")
          double meanPowerW,
      @Schema(description = "Limiter for the drivers: RMS voltage, V") Double limiterRmsV,
      @Schema(description = "Limiter for the amplifier: peak voltage, V") double limiterPeakV,
      @Schema(description = "Level of the channel alone at the main seat, dB SPL")
          Double levelDbSpl,
      @Schema(description = "The worst finding about this channel") Verdict verdict) {}

  /** One driver, with the programme and the settings of the sheet. */
  @Built
  public record DriverLine(
      @Schema(description = "Id of the driver") String id,
      @Schema(description = "Id of its channel") String channel,
      @Schema(
              description =
                  "Largest clean sine power it can get while cruising, held against its rated"
                      + " impedance, W: where in its band it gets most, crossover and cable counted")
          double cleanPowerW,
      @Schema(description = "Mean power, held against its rated impedance, W") double meanPowerW,
      @Schema(description = "Mean heat in its voice coils, W") double heatW,
      @Schema(description = "Continuous power over that mean power, dB") Double headroomDb,
      @Schema(description = "Largest displacement with the programme, one-way peak, mm")
          Double displacementMm,
      @Schema(description = "Travel over that displacement, dB") Double movementLeftDb,
      @Schema(description = "Largest displacement with a full-scale sine, one-way peak, mm")
          Double sineDisplacementMm,
      @Schema(description = "Lowest frequency at which such a sine moves it beyond xmax, Hz")
          Double sineBeyondFromHz,
      @Schema(description = "Highest one, Hz") Double sineBeyondToHz,
      @Schema(
              description =
                  "Capacitor in series that protects it where only an active high-pass does, µF:"
                      + " its corner lies at half that of the high-pass")
          Double protectionUf) {}

  /** Where channels hand over to each other. */
  @Built
  public record CrossoverLine(
      @Schema(description = "Id of the channel below") String lower,
      @Schema(description = "Id of the channel above") String upper,
      @Schema(description = "Crossover frequency of the plan, Hz") double frequencyHz,
      @Schema(description = "Lowest frequency the upper driver is at ease with, Hz")
          Double lowestHz,
      @Schema(description = "What decides it") LowReason lowestReason,
      @Schema(description = "Highest frequency the lower driver is at ease with, Hz")
          Double highestHz,
      @Schema(description = "What decides it") HighReason highestReason,
      @Schema(
              description =
                  "Largest loss there against all in phase with the delay advised, dB; below 300"
                      + " Hz only")
          Double lossDb,
      @Schema(description = "What the flight time alone would lose, dB") Double flightLossDb,
      @Schema(description = "By how much the lower channel is moved against its flight time, ms")
          Double movedMs,
      @Schema(description = "Whether the lower channel is to be turned in polarity")
          Boolean inverted) {}

  /** One group of channels. */
  public record RoleLine(
      @Schema(description = "Where the channels play") ChannelRole role,
      @Schema(description = "Level of the group at the main seat, as a sum of powers, dB SPL")
          double levelDbSpl,
      @Schema(description = "Most that left and right of the group differ, dB") double spreadDb) {}

  /** One seat. */
  public record SeatLine(
      @Schema(description = "Name of the seat") String name,
      @Schema(description = "Level of all channels together there, dB SPL") Double levelDbSpl,
      @Schema(description = "The same A-weighted, dBA") Double levelDba,
      @Schema(description = "Level in each third octave, dB SPL") List<Double> bandsDbSpl,
      @Schema(
              description =
                  "Largest less smallest arrival left, what roles are wanted to be later taken off,"
                      + " ms")
          double spreadMs,
      @Schema(
              description =
                  "Largest loss there at the crossovers of the bass against all in phase, dB; absent"
                      + " without any")
          Double crossoverLossDb) {}

  /** The supply in one situation. */
  public record SupplyLine(
      @Schema(description = "When") EngineState situation,
      @Schema(description = "Voltage at the battery with the programme, V; absent where none holds")
          Double batteryV,
      @Schema(description = "The same with a full sine on all channels, V; absent where none holds")
          Double sineBatteryV,
      @Schema(description = "Current of all amplifiers with the programme, A") Double currentA,
      @Schema(description = "Current with a full sine on all channels, A") Double sineCurrentA,
      @Schema(description = "One line per amplifier") List<FedLine> amplifiers) {}

  /** One amplifier on its supply. */
  public record FedLine(
      @Schema(description = "Id of the amplifier") String id,
      @Schema(description = "Voltage at it with the programme, V") Double voltageV,
      @Schema(description = "Voltage at it with a full sine on all channels, V") Double sineV,
      @Schema(description = "Current with the programme, A") Double currentA,
      @Schema(description = "Clean sine power of all its channels at that voltage, W")
          Double cleanPowerW) {}

  /** The supply cable of one amplifier and its fuse. */
  @Built
  public record CableLine(
      @Schema(description = "Id of the amplifier") String id,
      @Schema(description = "Cross-section, mm²; absent when none does") Double areaMm2,
      @Schema(description = "Whether it was found here and does not lie there yet") boolean found,
      @Schema(description = "Resistance of the whole loop, ohm") Double loopOhm,
      @Schema(description = "Drop over the loop with the programme while cruising, V") Double dropV,
      @Schema(description = "What the cable may carry for long, A") Double ampacityA,
      @Schema(description = "Least fuse that does not open, A") Double fuseLeastA,
      @Schema(description = "Largest fuse that still protects the cable, A") Double fuseLargestA,
      @Schema(description = "Standard fuse to take at the battery, A; absent when none fits")
          Double fuseA,
      @Schema(description = "Sum of the fuses in the amplifier itself, A") Double ownFuseA) {}

  /** What to set on one channel, in the order it is done. */
  @Built
  public record SetupLine(
      @Schema(description = "Id of the channel") String id,
      @Schema(description = "Id of the amplifier") String amplifier,
      @Schema(description = "Its outputs, two when bridged") List<String> outputs,
      @Schema(description = "High-pass") Filter highPass,
      @Schema(description = "Low-pass") Filter lowPass,
      @Schema(description = "Filters of the equaliser") List<ParametricFilter> equaliser,
      @Schema(description = "Frequency of the test tone, Hz: within the band of the channel")
          Double toneHz,
      @Schema(description = "Level of the test tone, dBFS") Double toneDbfs,
      @Schema(description = "Volume step of the source while the gain is set") Integer volumeStep,
      @Schema(description = "Whether the voltage is measured with open terminals or under load")
          Terminals terminals,
      @Schema(
              description =
                  "What a meter should read at the amplifier's end of the cable with the amplifier"
                      + " disconnected, ohm; absent where a capacitor stands in the way or a DC resistance"
                      + " is not known")
          Double meterOhm,
      @Schema(description = "RMS voltage to set with the test tone, V") Double gainTargetV,
      @Schema(description = "Trim, dB") double trimDb,
      @Schema(description = "Delay, ms: on the steps of the processor where there is one")
          double delayMs,
      @Schema(description = "Delay in samples; where there is a processor") Double delaySamples,
      @Schema(description = "Delay as path, mm") double delayMm,
      @Schema(description = "1 or -1: what the processor is set to") int polarity,
      @Schema(description = "Limiter for the drivers: RMS voltage, V") Double limiterRmsV,
      @Schema(description = "Limiter for the amplifier: peak voltage, V") double limiterPeakV,
      @Schema(description = "What was really set") SetLine set,
      @Schema(description = "Level of the channel alone at the main seat, dB SPL")
          Double levelDbSpl,
      @Schema(description = "What was measured") MeasuredLine measured) {}

  /** What was really set on one channel. */
  public record SetLine(
      @Schema(description = "RMS voltage with the test tone, V") Double gainV,
      @Schema(description = "The same over the one advised, dB") Double gainOffDb,
      @Schema(description = "Trim, dB") Double trimDb,
      @Schema(description = "Delay, ms") Double delayMs,
      @Schema(description = "Polarity of the processor") Integer polarity) {}

  /** What was measured of one channel. */
  public record MeasuredLine(
      @Schema(description = "Level, dB SPL") Double levelDbSpl,
      @Schema(description = "Measured less predicted level, dB") Double levelOffDb,
      @Schema(description = "DC resistance at the amplifier's end, ohm") Double meterOhm,
      @Schema(description = "What a meter should read there, ohm") Double expectedOhm,
      @Schema(description = "How much later than the earliest channel it arrives, ms")
          Double lateMs,
      @Schema(description = "Polarity found") Integer polarity,
      @Schema(description = "Whether it is that of the plan") Boolean polarityRight) {}

  /** The largest clean level. */
  public record LargestLine(
      @Schema(description = "Level at the main seat, dB SPL") Double levelDbSpl,
      @Schema(description = "The same A-weighted, dBA") Double levelDba,
      @Schema(description = "How far below full scale that is, dB, 0 or less") double driveDb,
      @Schema(description = "What ends it first") Limit heldBy,
      @Schema(description = "Id of the channel where; absent at full scale") String channel,
      @Schema(description = "Id of the driver; absent where it is none") String driver) {}

  /** Something that cannot be judged for want of data. */
  public record NotJudged(
      @Schema(description = "What is not judged") Unjudged what,
      @Schema(description = "Fields of the plan that would have to be given, as JSON Pointers")
          List<String> missing) {}
}
