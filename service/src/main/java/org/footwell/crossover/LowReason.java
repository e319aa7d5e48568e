package org.footwell.crossover;

import com.fasterxml.jackson.annotation.JsonProperty;

/** Why a crossover may not be lower. All of them protect the upper way. */
public enum LowReason {
  /** A multiple of the upper way's resonance. */
  @JsonProperty("resonance")
  RESONANCE("the resonance of the upper driver", "an upper driver with a lower resonance"),
  /** The upper way's displacement at the wanted level, with the steepest order allowed. */
  @JsonProperty("displacement")
  DISPLACEMENT(
      "the displacement of the upper driver",
      "a lower wanted level, a steeper order, or an upper driver with more area or displacement"),
  /** The upper way's heat from its part of the programme. */
  @JsonProperty("heat")
  HEAT(
      "the heat in the upper driver",
      "a lower wanted level, or an upper driver with more sensitivity or power"),
  /** What the upper way's data sheet allows. */
  @JsonProperty("data_sheet")
  DATA_SHEET(
      "the upper driver's data sheet", "an upper driver that its data sheet allows to go lower"),
  /** What the processor can be set to. */
  @JsonProperty("processor")
  PROCESSOR("the processor", "a processor that can be set lower");

  private final String words;
  private final String remedy;

  LowReason(String words, String remedy) {
    this.words = words;
    this.remedy = remedy;
  }

  /** What it is, in words. */
  public String inWords() {
    return words;
  }

  /** What would move this end, in words. */
  String remedy() {
    return remedy;
  }
}
