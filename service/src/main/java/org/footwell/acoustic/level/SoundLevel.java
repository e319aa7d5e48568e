package org.footwell.acoustic.level;

import static org.footwell.acoustic.level.LevelFinding.BAND_OUTSIDE_WEIGHTING;
import static org.footwell.acoustic.level.LevelFinding.BELOW_ROAD_NOISE;
import static org.footwell.acoustic.level.LevelFinding.CABIN_MODEL;
import static org.footwell.acoustic.level.LevelFinding.COMPRESSION_MODEL_LIMIT;
import static org.footwell.acoustic.level.LevelFinding.ROAD_NOISE_NOT_COMPARABLE;
import static org.footwell.acoustic.level.LevelFinding.SENSITIVITY_BASIS;
import static org.footwell.acoustic.level.LevelFinding.TARGET_OUT_OF_REACH;
import static org.footwell.calculation.Source.DEFINITION;

import java.util.List;
import org.footwell.acoustic.level.SoundLevelRequest.Addition;
import org.footwell.acoustic.level.SoundLevelRequest.Band;
import org.footwell.acoustic.level.SoundLevelRequest.Drive;
import org.footwell.calculation.Calculation;
import org.footwell.calculation.Card;
import org.footwell.calculation.Formula;
import org.footwell.calculation.Run;
import org.footwell.calculation.Source;
import org.footwell.parts.Cabin;
import org.footwell.parts.LevelAt;
import org.footwell.parts.Safety;
import org.footwell.parts.Sensitivity;
import org.footwell.parts.Sensitivity.Basis;
import org.footwell.parts.plan.AskOfPlan;
import org.footwell.parts.plan.PlanPlace;
import org.footwell.parts.plan.PlanReader;
import org.footwell.parts.plan.VehiclePlan;
import org.footwell.physics.Air;
import org.footwell.physics.BandSpectrum;
import org.footwell.physics.CabinGain;
import org.footwell.physics.Decibels;
import org.footwell.physics.DriverOutput;
import org.footwell.physics.Electricity;
import org.footwell.physics.FrequencyWeighting;
import org.footwell.physics.NoiseDose;
import org.footwell.physics.Piston;
import org.footwell.physics.PointSource;
import org.footwell.physics.SensitivityBases;
import org.footwell.physics.ThirdOctaves;

/** How loud it is at the seat, from sensitivity and power. */
public final class SoundLevel
    implements Calculation<SoundLevelRequest, SoundLevelResult>, AskOfPlan<SoundLevelRequest> {

  private static final Source SUPERPOSITION = Source.of("Superposition of sound pressures");

  private static final Formula.Of2 SHARE =
      Formula.of("driver_power_w", "P/N", "W", DEFINITION).with("P", "N", (p, n) -> p / n);
  private static final Formula.Of1 COHERENT =
      Formula.of("driver_count_db", "20·lg(N)", "dB", SUPERPOSITION)
          .with("N", Decibels::ofAmplitude);
  private static final Formula.Of1 INCOHERENT =
      Formula.of("driver_count_db", "10·lg(N)", "dB", SUPERPOSITION).with("N", Decibels::ofPower);
  private static final Formula.Of2 SUM =
      Formula.of("peak_level_db_spl", "L + crest factor", "dB SPL", DEFINITION)
          .with("L", "crest", Double::sum);
  private static final Formula.Of2 PEAK_C =
      Formula.of("peak_level_dbc", "LC + crest factor", "dBC", DEFINITION)
          .with("LC", "crest", Double::sum);
  private static final Formula.Of2 POWER_FOR_LEVEL =
      Formula.of("uncompressed_power_w", "10^((target − L1)/10)", "W", DEFINITION)
          .with("target", "L1", (target, l1) -> Decibels.toPower(target - l1));

  private static final Card<SoundLevelRequest, SoundLevelResult> CARD =
      Card.of("sound-level", SoundLevelRequest.class, SoundLevelResult.class)
          .title("Sound level at the seat")
          .purpose(
              "How loud will it be at the seat, from the drivers' sensitivity and their power; what"
                  + " power reaches a target, how far it stands above road noise and how long one"
                  + " may listen.")
          .example(
              """
              {"driver": {"rated_ohm": 4,
                 "sensitivity": {"level_db_spl": 90, "basis": "two_point_eight_three_volt"}},
               "power_w": 50, "distance_m": 1.2,
               "driver_count": 2, "drive": "each", "addition": "incoherent",
               "crest_factor_db": 12, "target_level_db_spl": 105,
               "road_noise_dba": 68, "a_weighting_db": -4}
              """)
          .sources(
              SensitivityBases.IEC_60268_5,
              PointSource.INVERSE_SQUARE,
              SUPERPOSITION,
              FrequencyWeighting.IEC_61672_1,
              ThirdOctaves.IEC_61260_1,
              NoiseDose.NIOSH,
              NoiseDose.DIRECTIVE_2003_10,
              Piston.HALF_SPACE,
              Source.COMMON_PRACTICE)
          .limits(
              "Drivers are point sources: closer than about three times their size the level is"
                  + " lower than stated.",
              "The cabin is a model of two rules; a measured transfer table is better, and is not used"
                  + " here.",
              "Compression is thermal only and proportional to average power; what heat and cone"
                  + " movement allow is known only where their figures are given.",
              "The limit by cone movement takes the cone as a rigid piston in half space, all peaks"
                  + " at the one frequency stated.",
              "Exposure is a caution from a rule for work places, not a promise of safety.")
          .findings(LevelFinding.values())
          .refusals(LevelFault.values())
          .cautions(Safety.HEARING)
          .build();

  @Override
  public Card<SoundLevelRequest, SoundLevelResult> card() {
    return CARD;
  }

  @Override
  public List<PlanPlace> places() {
    return List.of(PlanPlace.DRIVER);
  }

  @Override
  public SoundLevelRequest ask(PlanReader plan) {
    int driver = plan.about().index();
    VehiclePlan vehicle = plan.plan();
    Double peaks = plan.cleanPowerW(driver, "/power_w");
    Double crest = plan.crestFactorDb("/crest_factor_db");
    plan.called("/distance_m", plan.about().pointer() + "/position");
    plan.also("/vehicle");
    return SoundLevelRequestBuilder.builder()
        .driver(plan.joined(driver))
        .powerW(peaks == null ? null : (Double) DriverOutput.MEAN_POWER.at(peaks, crest))
        .distanceM(
            vehicle
                .drivers()
                .get(driver)
                .position()
                .distanceTo(vehicle.seats().get(vehicle.mainSeat()).head()))
        .cabin(vehicle.vehicle().cabin())
        .crestFactorDb(crest)
        .roadNoiseDba(vehicle.vehicle().roadNoiseDba())
        .spectrum(spectrum(vehicle.programme().spectrum(), plan))
        .build();
  }

  private static List<SoundLevelRequest.Band> spectrum(List<LevelAt> levels, PlanReader plan) {
    return levels == null
        ? null
        : plan.made(
            levels.stream()
                .map(at -> new SoundLevelRequest.Band(at.frequencyHz(), at.levelDb()))
                .toList(),
            "/programme/spectrum");
  }

  @Override
  public SoundLevelResult compute(SoundLevelRequest q, Run run) {

    Sensitivity sensitivity = q.driver().sensitivity();
    double ratedOhm = q.driver().ratedOhm();
    double difference = run.apply(SensitivityBases.BASIS_DIFFERENCE, ratedOhm);
    double oneWatt = sensitivity.oneWattDbSpl(difference);
    double atVoltage = sensitivity.voltageDbSpl(difference);
    if (Math.abs(difference) > 0.5) {
      boolean perWatt = sensitivity.basis() == Basis.ONE_WATT;
      run.find(SENSITIVITY_BASIS)
          .at("/driver/sensitivity")
          .value(sensitivity.levelDbSpl())
          .with("basis", perWatt ? LevelWords.PER_WATT : LevelWords.AT_2_83_V)
          .with("other", perWatt ? atVoltage : oneWatt)
          .with("otherBasis", perWatt ? LevelWords.AT_2_83_V : LevelWords.PER_WATT);
    }

    double sharing = q.drive() == Drive.SHARED ? q.driverCount() : 1;
    double driverPower =
        q.powerW() == null
            ? run.apply(Electricity.POWER, q.voltageV(), ratedOhm)
            : run.apply(SHARE, q.powerW(), sharing);
    double count =
        run.apply(q.addition() == Addition.INCOHERENT ? INCOHERENT : COHERENT, q.driverCount());
    double distance = distance(q, run);
    Double cabinGain = cabinGain(q, run);
    double gain = count + distance + (cabinGain == null ? 0 : cabinGain);

    double perWattOfHeat = compressionPerWatt(q, driverPower, run);
    double compression =
        perWattOfHeat == 0 ? 0 : run.apply(Compression.LOSS_DB, perWattOfHeat, driverPower);
    double level = run.apply(DriverOutput.LEVEL, oneWatt, driverPower, gain - compression);
    double peak = run.apply(SUM, level, q.crestFactorDb());
    Double needed = powerNeeded(q, oneWatt + gain, perWattOfHeat, sharing, run);

    BandSpectrum spectrum = spectrum(q, run);
    Double levelDba = q.aWeightingDb() == null ? null : Double.valueOf(level + q.aWeightingDb());
    Double levelDbc = null;
    if (spectrum != null) {
      levelDba = level + spectrum.differenceDb(FrequencyWeighting.A);
      levelDbc = level + spectrum.differenceDb(FrequencyWeighting.C);
    }
    Double peakDbc =
        levelDbc == null ? null : Double.valueOf(run.apply(PEAK_C, levelDbc, q.crestFactorDb()));
    return SoundLevelResultBuilder.builder()
        .levelDbSpl(level)
        .peakLevelDbSpl(peak)
        .oneWattLevelDbSpl(oneWatt)
        .twoPointEightThreeVoltLevelDbSpl(atVoltage)
        .driverPowerW(driverPower)
        .driverCountDb(count)
        .distanceDb(distance)
        .cabinGainDb(cabinGain)
        .compressionDb(compression)
        .powerNeededW(needed)
        .levelDba(levelDba)
        .levelDbc(levelDbc)
        .peakLevelDbc(peakDbc)
        .overRoadNoiseDb(overRoadNoise(q, levelDba, run))
        .exposureAllowedH(Exposure.judge(levelDba, level, peakDbc, peak, run))
        .limits(
            DriverLimits.of(
                q, new DriverLimits.Played(oneWatt, driverPower, gain, perWattOfHeat), run))
        .build();
  }

  private static double distance(SoundLevelRequest q, Run run) {
    if (q.cabin() == null) {
      return run.apply(PointSource.DISTANCE, q.distanceM());
    }
    double critical = q.cabin().criticalDistanceM();
    run.find(CABIN_MODEL).at("/cabin").value(critical);
    return run.apply(PointSource.DISTANCE, CabinGain.countedM(q.distanceM(), critical));
  }

  private static Double cabinGain(SoundLevelRequest q, Run run) {
    Cabin cabin = q.cabin();
    if (cabin == null || q.frequencyHz() == null) {
      return null;
    }
    double corner = run.apply(CabinGain.CORNER, Air.REFERENCE_SPEED_M_PER_S, cabin.lengthM());
    return run.apply(CabinGain.RISE, corner, q.frequencyHz(), cabin.gainCapDb());
  }

  private static double compressionPerWatt(SoundLevelRequest q, double driverPower, Run run) {
    if (q.compression() == null) {
      return 0;
    }
    double k =
        run.apply(
            Compression.PER_WATT, q.compression().compressionDb(), q.compression().atPowerW());
    if (k * driverPower > 1) {
      run.find(COMPRESSION_MODEL_LIMIT).at("/compression").value(driverPower).limit(1 / k);
    }
    return k;
  }

  /** Power for the target, counted as the caller counts it; null without a target or out of reach. */
  private static Double powerNeeded(
      SoundLevelRequest q, double oneWattAtSeat, double k, double sharing, Run run) {
    if (q.targetLevelDbSpl() == null) {
      return null;
    }
    double x = run.apply(POWER_FOR_LEVEL, q.targetLevelDbSpl(), oneWattAtSeat);
    if (k * x > 0.25) {
      run.find(TARGET_OUT_OF_REACH)
          .at("/target_level_db_spl")
          .value(oneWattAtSeat + Decibels.ofPower(0.25 / k))
          .limit(q.targetLevelDbSpl());
      return null;
    }
    return sharing * (k == 0 ? x : run.apply(Compression.POWER_FOR, k, x));
  }

  /** The spectrum of the programme, null without one. */
  private static BandSpectrum spectrum(SoundLevelRequest q, Run run) {
    if (q.spectrum() == null) {
      return null;
    }
    BandSpectrum spectrum = new BandSpectrum();
    for (int i = 0; i < q.spectrum().size(); i++) {
      Band band = q.spectrum().get(i);
      String at = "/spectrum/" + i + "/frequency_hz";
      spectrum.add(band.frequencyHz(), band.levelDb());
      if (!FrequencyWeighting.covers(band.frequencyHz())) {
        run.find(BAND_OUTSIDE_WEIGHTING).at(at).value(band.frequencyHz());
      }
    }
    return spectrum;
  }

  private static Double overRoadNoise(SoundLevelRequest q, Double levelDba, Run run) {
    if (q.roadNoiseDba() == null) {
      return null;
    }
    if (levelDba == null) {
      run.find(ROAD_NOISE_NOT_COMPARABLE).at("/road_noise_dba");
      return null;
    }
    double over = levelDba - q.roadNoiseDba();
    if (over < 0) {
      run.find(BELOW_ROAD_NOISE).at("/road_noise_dba").value(-over).limit(0);
    }
    return over;
  }
}
