package org.footwell.vehicle;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.footwell.Answers;
import org.footwell.acoustic.enclosure.ClosedBox;
import org.footwell.acoustic.enclosure.ClosedBoxRequestBuilder;
import org.footwell.acoustic.enclosure.ClosedBoxResult;
import org.footwell.acoustic.level.SoundLevelResult.Holds;
import org.footwell.calculation.Fault;
import org.footwell.calculation.Finding;
import org.footwell.parts.BoxBuilder;
import org.footwell.parts.DriverBuilder;
import org.footwell.parts.Filter;
import org.footwell.vehicle.PlanReviewResult.BandLine;
import org.footwell.vehicle.PlanReviewResult.BoxLine;
import org.footwell.vehicle.PlanReviewResult.ChannelLine;
import org.footwell.web.request.Json;
import org.junit.jupiter.api.Test;

/** Limits of each band, boxes, data sheets of the parts and levels at the seats of the demo plan. */
class BandsAndBoxesTest {

  private static BandLine band(PlanReviewResult result, String channel, String band) {
    return result.bands().stream()
        .filter(line -> line.channel().equals(channel))
        .filter(line -> band == null ? line.band() == null : band.equals(line.band()))
        .findFirst()
        .orElseThrow();
  }

  private static ChannelLine channel(PlanReviewResult result, String id) {
    return result.channels().stream().filter(c -> c.id().equals(id)).findFirst().orElseThrow();
  }

  private static String json(Filter filter) {
    return Json.MAPPER.valueToTree(filter).toString();
  }

  @Test
  void everyBandOfAPassiveCrossoverHasItsOwnHeadroomAndLevel() {
    PlanReviewResult result = new VehicleDraft().answer().result();
    assertEquals(8, result.bands().size());
    BandLine low = band(result, "front_left", "low");
    BandLine high = band(result, "front_left", "high");
    assertEquals(List.of("front_left_woofer"), low.drivers());
    assertEquals(10 * Math.log10(low.driverPowerW() / 80), low.headroomDb(), 1e-9);
    // The tweeter is 1 dB more sensitive, and a channel is as loud as its weakest band.
    assertEquals(1, high.levelDbSpl() - low.levelDbSpl(), 0.1);
    assertEquals(low.levelDbSpl(), channel(result, "front_left").levelDbSpl());
    assertEquals(List.of("sub_left", "sub_right"), band(result, "bass", null).drivers());
  }

  @Test
  void aTweeterCrossedTooLowHoldsItsChannelBack() {
    VehicleDraft draft = new VehicleDraft();
    draft.at("/drivers/1/high_pass").put("frequency_hz", 1200);
    PlanReviewResult result = draft.answer().result();
    BandLine high = band(result, "front_left", "high");
    assertEquals(Holds.DISPLACEMENT, high.heldBy());
    double room = high.largestLevelDbSpl() - high.levelDbSpl();
    assertTrue(room < -3, () -> "room " + room);
    ChannelLine line = channel(result, "front_left");
    assertEquals(line.levelDbSpl() + room, line.largestLevelDbSpl(), 1e-9);
    assertEquals(Holds.DISPLACEMENT, line.heldBy());
    assertEquals(Holds.POWER, band(result, "front_right", "high").heldBy());
  }

  @Test
  void aConeThatNothingJudgesIsNamed() {
    VehicleDraft draft = new VehicleDraft().remove("/drivers/1", "high_pass");
    draft.remove("/drivers/7", "enclosure").remove("/drivers/8", "enclosure");
    List<Finding> notes = draft.findings("movement-not-judged");
    assertEquals(
        List.of("/channels/0", "/channels/5"), notes.stream().map(Finding::pointer).toList());
    assertTrue(notes.get(0).text().contains("front_left_tweeter"), notes.get(0)::text);
    assertTrue(notes.get(1).text().contains("sub_left, sub_right"), notes.get(1)::text);
    assertEquals(List.of(), new VehicleDraft().findings("movement-not-judged"));
  }

  @Test
  void aBoxIsWhatClosedBoxMakesOfItAtThePeaksBehindTheChannelsFilters() {
    PlanReviewResult result = new VehicleDraft().answer().result();
    BoxLine line = result.boxes().get(0);
    double power = band(result, "bass", null).driverPowerW();
    ClosedBoxResult alone =
        Answers.of(
                new ClosedBox(),
                ClosedBoxRequestBuilder.builder()
                    .driver(
                        DriverBuilder.builder()
                            .reOhm(3.6)
                            .ratedOhm(4.0)
                            .fsHz(31.0)
                            .qms(5.8)
                            .qes(0.49)
                            .vasL(37.0)
                            .sdCm2(330.0)
                            .xmaxMm(11.0)
                            .leMh(1.1)
                            .leExponent(0.65)
                            .continuousPowerW(250.0)
                            .build())
                    .box(
                        BoxBuilder.builder()
                            .volumeL(18.0)
                            .fillFactor(1.1)
                            .driverDisplacementL(2.2)
                            .build())
                    .powerW(power)
                    .lowPass(Filter.of(Filter.Kind.LINKWITZ_RILEY, 4, 80.0))
                    .build())
            .result();
    assertEquals("sub_left", line.driver());
    assertEquals(alone.fcHz(), line.resonanceHz(), 1e-9);
    assertEquals(alone.qtc(), line.qtc(), 1e-12);
    assertEquals(alone.response().f3Hz(), line.f3Hz(), 1e-9);
    assertEquals(alone.limits().largestDisplacementMm(), line.displacementMm(), 1e-9);
    assertNull(line.portVelocityMPerS());
  }

  @Test
  void aBoxThatLetsTheConeGoTooFarHoldsTheBassBack() {
    VehicleDraft draft = new VehicleDraft();
    for (int driver = 7; driver <= 8; driver++) {
      draft.at("/drivers/" + driver + "/enclosure/closed").put("volume_l", 90);
    }
    PlanReviewResult result = draft.answer().result();
    BoxLine box = result.boxes().get(0);
    assertTrue(box.displacementMm() > 11, box::toString);
    ChannelLine bass = channel(result, "bass");
    assertEquals(Holds.DISPLACEMENT, bass.heldBy());
    // The level may come down until the cone keeps within its 11 mm.
    assertEquals(
        20 * Math.log10(11 / box.displacementMm()),
        bass.largestLevelDbSpl() - bass.levelDbSpl(),
        1e-9);
    assertEquals(
        List.of("/new_parts/4/xmax_mm", "/new_parts/4/xmax_mm"),
        draft.findings("displacement-beyond-xmax").stream().map(Finding::pointer).toList());
    // A subsonic high-pass on the channel gives it back.
    draft.put("/channels/5", "high_pass", json(box.subsonic()));
    assertEquals(List.of(), draft.findings("displacement-beyond-xmax"));
  }

  @Test
  void aVentedBoxTellsTheSpeedOfItsAir() {
    VehicleDraft draft =
        new VehicleDraft()
            .put(
                "/drivers/7",
                "enclosure",
                """
                {"vented": {"box": {"volume_l": 40, "fb_hz": 32}, "port": {"diameter_mm": 100}}}
                """);
    BoxLine box = draft.answer().result().boxes().get(0);
    assertEquals(32, box.resonanceHz(), 1e-9);
    assertTrue(box.portVelocityMPerS() > 17, box::toString);
    assertEquals(
        "/drivers/7/enclosure/vented/port", draft.findings("port-air-too-fast").get(0).pointer());
  }

  @Test
  void anEnclosureMustBeDecidedAndItsPartKnown() {
    VehicleDraft draft = new VehicleDraft().put("/drivers/7", "enclosure", "{}");
    draft.put("/drivers/8", "enclosure", "{\"closed\": {\"volume_l\": 20}}");
    draft.remove("/new_parts/4/impedance", "vas_l");
    assertEquals(
        List.of("exactly-one-of /drivers/7/enclosure", "boxed-part-incomplete /new_parts/4"),
        draft.refusals().stream().map(f -> f.code() + " " + f.pointer()).toList());
  }

  @Test
  void aPassiveHighPassThatDoesNotExistIsRefused() {
    VehicleDraft draft = new VehicleDraft();
    draft.at("/drivers/1/high_pass").put("kind", "linkwitz_riley").put("order", 3);
    assertEquals(
        List.of("linkwitz-riley-odd /drivers/1/high_pass/order"),
        draft.refusals().stream().map(f -> f.code() + " " + f.pointer()).toList());
  }

  @Test
  void aFaultInABoxPointsIntoThePlan() {
    VehicleDraft draft = new VehicleDraft();
    draft.at("/drivers/7/enclosure/closed").put("qtc", 0.7);
    List<Fault> faults = draft.refusals();
    assertEquals("/drivers/7/enclosure", faults.get(0).pointer());
    assertTrue(faults.get(0).detail().contains("closed.qtc"), faults.get(0)::detail);
  }

  @Test
  void aPartThatContradictsItselfIsFound() {
    VehicleDraft draft = new VehicleDraft();
    draft.at("/new_parts/4/sensitivity").put("level_db_spl", 95);
    assertEquals(
        "/new_parts/4/sensitivity", draft.findings("sensitivity-contradicted").get(0).pointer());
    assertEquals(List.of(), new VehicleDraft().findings("sensitivity-contradicted"));
  }

  @Test
  void aResistanceStatedTwiceMustBeTheSame() {
    VehicleDraft draft = new VehicleDraft();
    draft.at("/new_parts/0/impedance").put("re_ohm", 3.6);
    Finding finding = draft.findings("coil-resistance-twice").get(0);
    assertEquals("/new_parts/0/re_ohm", finding.pointer());
    assertTrue(finding.inFull().contains("3.3 ohm"), finding::inFull);
    draft.at("/new_parts/0/impedance").put("re_ohm", 3.4);
    assertEquals(List.of(), draft.findings("coil-resistance-twice"));
  }

  @Test
  void everySeatHasItsLevelAndTheMainOneThatOfTheSystem() {
    VehicleDraft draft = new VehicleDraft();
    PlanReviewResult result = draft.answer().result();
    assertEquals(result.levelDbSpl(), result.seats().get(0).levelDbSpl(), 1e-9);
    // Within the critical distance of 0.4 m the distance law holds: 0.2 m are 6 dB more.
    draft.at("/seats/1/position").put("x_m", 1.05).put("y_m", 0.2).put("z_m", 1.05);
    PlanReviewResult near = draft.answer().result();
    double centre = channel(result, "centre").levelDbSpl();
    double others = Math.pow(10, result.levelDbSpl() / 10) - Math.pow(10, centre / 10);
    assertTrue(
        near.seats().get(1).levelDbSpl()
            > 10 * Math.log10(others + Math.pow(10, (centre + 6) / 10)) - 0.01);
    draft.remove("/new_parts/2", "sensitivity");
    assertNull(draft.answer().result().seats().get(0).levelDbSpl());
  }
}
