package org.footwell.reference;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.List;

/**
 * An answer of the size that sound-level gives to the request of {@code load.sh}, as it stood on
 * 2026-11-30. It is no part of the service and does not change with it.
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
record LevelAnswer(
    Levels result, List<Remark> findings, Judgement verdict, List<String> safety) {

  static final LevelAnswer EXAMPLE =
      new LevelAnswer(
          new Levels(
              108.4163750790475,
              120.4163750790475,
              90.0,
              93.01512879720619,
              50.0,
              3.010299956639812,
              -1.583624920952496,
              0.0,
              22.768399153212357,
              104.4163750790475,
              36.4163750790475,
              0.0901127448076898),
          List.of(
              new Remark(
                  Judgement.WARNING,
                  "exposure-limited",
                  "At 104.4 dBA one may listen 5.4 minutes a day by the recommendation for work"
                      + " places; 85 dBA is the level for eight hours.",
                  "Keep to that time, or turn it down.",
                  "",
                  104.4163750790475,
                  85.0),
              new Remark(
                  Judgement.NOTE,
                  "sensitivity-basis",
                  "The 90 dB given were taken per watt; that is 93.02 dB at 2.83 V.",
                  null,
                  "/driver/sensitivity",
                  90.0,
                  null)),
          Judgement.WARNING,
          List.of(
              "Loud sound damages hearing for good, and a driver must hear traffic and sirens. Keep"
                  + " levels and times within the rules for noise exposure that apply where you"
                  + " are."));

  record Levels(
      double levelDbSpl,
      double peakLevelDbSpl,
      double oneWattLevelDbSpl,
      double twoPointEightThreeVoltLevelDbSpl,
      double driverPowerW,
      double driverCountDb,
      double distanceDb,
      double compressionDb,
      Double powerNeededW,
      Double levelDba,
      Double overRoadNoiseDb,
      Double exposureAllowedH) {}

  @JsonInclude(JsonInclude.Include.NON_NULL)
  record Remark(
      Judgement level,
      String code,
      String text,
      String advice,
      String pointer,
      Double value,
      Double limit) {}

  enum Judgement {
    @JsonProperty("note")
    NOTE,
    @JsonProperty("warning")
    WARNING
  }
}
