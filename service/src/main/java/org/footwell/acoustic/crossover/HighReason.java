package org.footwell.acoustic.crossover;

import java.util.List;

/** Why a crossover may not be higher. */
@SuppressWarnings("ImmutableEnumChecker") // lists of texts that nobody can change
public enum HighReason {
  /** The lower way's cone gets large against the wavelength. */
  BEAMING(
      true,
      "beaming of the lower driver",
      "a smaller lower driver",
      "a way between",
      "a higher beaming_ka"),
  /** The centres of both ways get far apart against the wavelength. */
  SPACING(true, "the spacing of the drivers", "the two drivers closer together"),
  /** The ear would find the subwoofer's place. */
  LOCALISATION(
      true,
      "the ear, which would find the subwoofer,",
      "a subwoofer so near the front ways that it may play higher"),
  /** The lower way's heat from its part of the programme. */
  HEAT(
      false,
      "the heat in the lower driver",
      "a lower wanted level",
      "a lower driver with more sensitivity or power"),
  /** What the lower way's data sheet recommends. */
  DATA_SHEET(
      false,
      "the lower driver's data sheet (upper_limit_hz)",
      "a lower driver that reaches higher",
      "a way between"),
  /** What the processor can be set to. */
  PROCESSOR(false, "the processor", "a processor that can be set higher");

  private final boolean costsSoundOnly;
  private final String words;
  private final List<String> remedies;

  HighReason(boolean costsSoundOnly, String words, String... remedies) {
    this.costsSoundOnly = costsSoundOnly;
    this.words = words;
    this.remedies = List.of(remedies);
  }

  /** Whether going higher costs evenness of sound, and neither a driver nor what is possible. */
  boolean costsSoundOnly() {
    return costsSoundOnly;
  }

  /** What it is, in words. */
  public String inWords() {
    return words;
  }

  /** What would move this end, each in words. */
  List<String> remedies() {
    return remedies;
  }
}
