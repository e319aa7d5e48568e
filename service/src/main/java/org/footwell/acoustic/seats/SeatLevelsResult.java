package org.footwell.acoustic.seats;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;

/** Levels by band: of each source alone, of all together at each seat. */
public record SeatLevelsResult(
    @Schema(description = "Each source alone, in the order given") List<SourceLine> sources,
    @Schema(description = "What all play together: one common drive for every band")
        List<Drive> bands,
    @Schema(description = "Each seat, in the order given") List<SeatLine> seats,
    @Schema(description = "Where the headroom over the target is smallest; absent without target")
        Tightest smallestHeadroom,
    @Schema(description = "The largest programme in the shape of the target; absent without target")
        Largest largest) {

  /** One source alone, as loud as it can play a sine. */
  public record SourceLine(
      @Schema(description = "Name of the source") String name,
      @Schema(description = "By band") List<SourceBand> bands) {}

  /** One source in one band, alone. */
  public record SourceBand(
      @Schema(description = "Exact mid-band frequency, Hz") double frequencyHz,
      @Schema(description = "Largest level of a sine at 1 m in half space, dB SPL")
          double levelDbSpl,
      @Schema(description = "Power each of its drivers takes then, W") double powerW,
      @Schema(description = "What holds it there") SourceLimit limitedBy) {}

  /** What all sources play in one band. */
  public record Drive(
      @Schema(description = "Exact mid-band frequency, Hz") double frequencyHz,
      @Schema(description = "Signal against full drive, dB: as far as no source passes a limit")
          double driveDb,
      @Schema(description = "Source that holds it there; absent at full drive")
          String limitingSource,
      @Schema(description = "What holds that source") SourceLimit limitedBy,
      @Schema(description = "Low-frequency gain of the cabin, dB; absent without a cabin")
          Double cabinGainDb) {}

  /** One seat. */
  public record SeatLine(
      @Schema(description = "Name of the seat") String name,
      @Schema(description = "By band") List<SeatBand> bands) {}

  /** One band at one seat, at the common drive. */
  public record SeatBand(
      @Schema(description = "Exact mid-band frequency, Hz") double frequencyHz,
      @Schema(description = "Each source's part, dB SPL, in the order of the sources")
          List<Double> sourceLevelsDbSpl,
      @Schema(description = "Sum of their pressures with phases, dB SPL") double coherentLevelDbSpl,
      @Schema(description = "Sum of their powers, dB SPL") double incoherentLevelDbSpl,
      @Schema(description = "The one of the two that counts at this frequency, dB SPL")
          double levelDbSpl,
      @Schema(description = "Target, dB SPL; absent where there is none") Double targetLevelDbSpl,
      @Schema(description = "Level over target, dB") Double headroomDb) {}

  /** Where the headroom is smallest. */
  public record Tightest(
      @Schema(description = "Headroom over the target, dB; negative: the target is not reached")
          double headroomDb,
      @Schema(description = "Seat") String seat,
      @Schema(description = "Exact mid-band frequency, Hz") double frequencyHz,
      @Schema(description = "Source that holds the level there; absent at full drive")
          String limitingSource,
      @Schema(description = "What holds it") SourceLimit limitedBy) {}

  /** A programme with all bands at once, at the reference seat in the shape of the target. */
  public record Largest(
      @Schema(description = "Seat whose levels have the shape of the target") String referenceSeat,
      @Schema(description = "How far above the target all bands can go together, dB")
          double overTargetDb,
      @Schema(description = "Source that holds it there") String limitingSource,
      @Schema(description = "What holds it") SourceLimit limitedBy,
      @Schema(description = "Each seat then") List<SeatTotal> seats) {}

  /** All bands together at one seat. */
  public record SeatTotal(
      @Schema(description = "Name of the seat") String name,
      @Schema(description = "Level of all bands, dB SPL") double levelDbSpl,
      @Schema(description = "The same A-weighted, dBA") double levelDba) {}
}
