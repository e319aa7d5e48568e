package org.footwell.reference;

import com.fasterxml.jackson.annotation.JsonProperty;

/** A request of sound-level in records of its own, without the service's bounds and rules. */
record PlainRequest(
    Driver driver,
    Double powerW,
    Double voltageV,
    Double distanceM,
    Integer driverCount,
    Sharing drive,
    Adding addition,
    Double crestFactorDb,
    Double targetLevelDbSpl,
    Double roadNoiseDba,
    @JsonProperty("a_weighting_db") Double aWeightingDb) {

  record Driver(String name, Double ratedOhm, Sensitivity sensitivity) {}

  record Sensitivity(Double levelDbSpl, Basis basis) {}

  enum Basis {
    @JsonProperty("one_watt")
    ONE_WATT,
    @JsonProperty("two_point_eight_three_volt")
    TWO_POINT_EIGHT_THREE_VOLT
  }

  enum Sharing {
    @JsonProperty("shared")
    SHARED,
    @JsonProperty("each")
    EACH
  }

  enum Adding {
    @JsonProperty("coherent")
    COHERENT,
    @JsonProperty("incoherent")
    INCOHERENT
  }
}
