package org.footwell.vehicle;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.List;
import org.footwell.Answers;
import org.footwell.calculation.Answer;
import org.footwell.calculation.text.Names;
import org.footwell.vehicle.PlanReviewResult.ChannelLine;
import org.footwell.vehicle.PlanReviewResult.SeatLine;
import org.footwell.vehicle.chain.ChannelState;
import org.footwell.vehicle.chain.SoundField;
import org.footwell.vehicle.reading.Modelled;

/** What holds for every plan, whatever is in it. */
final class PlanLaws {

  private static final double SAME_DB = 1e-6;
  private static final double SAME = 1e-9;

  private PlanLaws() {}

  static Answer<PlanReviewResult> review(JsonNode plan) {
    return Answers.of(new PlanReview(), ModelledPlans.plan(plan));
  }

  /** Trims and delays are those a processor can set, and none is more than it need be. */
  static void trimsAndDelaysStartAtNothing(PlanReviewResult result) {
    double trim = result.channels().stream().mapToDouble(ChannelLine::trimDb).max().orElseThrow();
    assertEquals(0, trim, SAME, "largest trim");
    double least = result.channels().stream().mapToDouble(ChannelLine::delayMs).min().orElseThrow();
    assertEquals(0, least, SAME, "smallest delay");
  }

  /** No answer has a number that is none. */
  static void everyNumberIsOne(Object value, String path) {
    if (value instanceof Record record) {
      for (RecordComponent component : record.getClass().getRecordComponents()) {
        try {
          component.getAccessor().setAccessible(true);
          Object inner = component.getAccessor().invoke(record);
          everyNumberIsOne(inner, path + "/" + Names.snake(component.getName()));
        } catch (ReflectiveOperationException e) {
          throw new IllegalStateException(e);
        }
      }
    } else if (value instanceof List<?> list) {
      for (int i = 0; i < list.size(); i++) {
        everyNumberIsOne(list.get(i), path + "/" + i);
      }
    } else if (value instanceof Double number) {
      assertTrue(Double.isFinite(number), () -> path + " is " + number);
    }
  }

  /** The sheet as a colleague types it into the settings gives the headline again. */
  static void theSheetGivesTheHeadline(ObjectNode plan, Answer<PlanReviewResult> answer) {
    ObjectNode set = plan.deepCopy();
    set.set("settings", settings(answer, plan.has("signal")));
    PlanReviewResult again = review(set).result();
    PlanReviewResult first = answer.result();
    assertEquals(first.levelDbSpl(), again.levelDbSpl(), SAME_DB, "headline");
    assertEquals(first.levelDba(), again.levelDba(), SAME_DB, "headline A-weighted");
    assertEquals(first.largest().levelDbSpl(), again.largest().levelDbSpl(), SAME_DB, "largest");
    for (int s = 0; s < first.seats().size(); s++) {
      SeatLine seat = first.seats().get(s);
      assertEquals(seat.levelDbSpl(), again.seats().get(s).levelDbSpl(), SAME_DB, seat.name());
    }
  }

  static ArrayNode settings(Answer<PlanReviewResult> answer, boolean gains) {
    String csv = Sheets.text("setup_csv", null, answer);
    ArrayNode settings = new ObjectMapper().createArrayNode();
    for (NamedCsvRecord row : CsvReader.builder().ofNamedCsvRecord(csv)) {
      ObjectNode one = settings.addObject().put("channel", row.getField("channel"));
      if (gains) {
        one.put("gain_v", Double.parseDouble(row.getField("gain_target_v")));
      }
      one.put("trim_db", Double.parseDouble(row.getField("trim_db")));
      one.put("delay_ms", Double.parseDouble(row.getField("delay_ms")));
      one.put("polarity", row.getField("polarity").equals("inverted") ? -1 : 1);
    }
    return settings;
  }

  /** What is left becomes right, and the other way; the lists in another order. */
  static void leftAndRightSwapTheAnswers(ObjectNode plan, PlanReviewResult first) {
    ObjectNode swapped = (ObjectNode) swapped(plan, "");
    for (String list : List.of("channels", "drivers", "new_parts", "amplifiers")) {
      ArrayNode given = (ArrayNode) swapped.get(list);
      List<JsonNode> nodes = new ArrayList<>();
      given.forEach(node -> nodes.add(0, node));
      given.removeAll().addAll(nodes);
    }
    PlanReviewResult other = review(swapped).result();
    assertEquals(first.levelDbSpl(), other.levelDbSpl(), SAME_DB);
    assertEquals(first.levelDba(), other.levelDba(), SAME_DB);
    assertEquals(first.largest().driveDb(), other.largest().driveDb(), SAME_DB);
    for (int s = 0; s < first.seats().size(); s++) {
      SeatLine seat = first.seats().get(s);
      assertEquals(seat.levelDbSpl(), other.seats().get(s).levelDbSpl(), SAME_DB, seat.name());
    }
    for (ChannelLine channel : first.channels()) {
      ChannelLine same =
          other.channels().stream()
              .filter(one -> one.id().equals(otherSide(channel.id())))
              .findFirst()
              .orElseThrow();
      assertEquals(channel.trimDb(), same.trimDb(), SAME_DB, channel.id());
      assertEquals(channel.delayMs(), same.delayMs(), 1e-6, channel.id());
      assertEquals(channel.levelDbSpl(), same.levelDbSpl(), SAME_DB, channel.id());
      assertEquals(channel.meanPowerW(), same.meanPowerW(), SAME * channel.meanPowerW());
    }
  }

  private static JsonNode swapped(JsonNode node, String name) {
    ObjectMapper json = new ObjectMapper();
    if (node.isObject()) {
      ObjectNode object = json.createObjectNode();
      node.properties().forEach(e -> object.set(e.getKey(), swapped(e.getValue(), e.getKey())));
      return object;
    }
    if (node.isArray()) {
      ArrayNode array = json.createArrayNode();
      node.forEach(one -> array.add(swapped(one, "")));
      return array;
    }
    if (name.equals("y_m")) {
      return json.getNodeFactory().numberNode(-node.asDouble());
    }
    return node.isTextual() ? json.getNodeFactory().textNode(otherSide(node.asText())) : node;
  }

  private static String otherSide(String id) {
    return id.replace("left", "LEFT").replace("right", "left").replace("LEFT", "right");
  }

  /**
   * One channel turned off, the others set as they were: their sum and its own pressure, once with
   * and once against it, hold twice the powers of both, at every frequency and every seat.
   */
  static void aChannelTurnedOffTakesItsPart(ObjectNode plan, Answer<PlanReviewResult> answer) {
    int last = plan.get("channels").size() - 1;
    if (last == 0) {
      return;
    }
    ObjectNode set = plan.deepCopy();
    set.remove("supply"); // voltages are held
    set.set("settings", settings(review(set), plan.has("signal")));
    Modelled all = ModelledPlans.modelled(set);
    ObjectNode less = without(set, last);
    Modelled left = ModelledPlans.modelled(less);
    List<ChannelState> with = all.heard();
    List<ChannelState> against = new ArrayList<>(with);
    ChannelState off = with.get(last);
    against.set(
        last, new ChannelState(off.sourceV(), off.trimDb(), -off.polarity(), off.delayMs()));
    for (int s = 0; s < plan.get("seats").size(); s++) {
      SoundField field = all.model().field();
      double[] sum = field.together(s, with).bandPower();
      double[] difference = field.together(s, against).bandPower();
      double[] rest = left.model().field().together(s, left.heard()).bandPower();
      double[] own = field.alone(s, with, last).bandPower();
      for (int b = 0; b < sum.length; b++) {
        double both = 2 * (rest[b] + own[b]);
        assertEquals(both, sum[b] + difference[b], 1e-6 * both, "band " + b);
      }
    }
  }

  private static ObjectNode without(ObjectNode plan, int channel) {
    ObjectNode less = plan.deepCopy();
    String id = plan.at("/channels/" + channel + "/id").asText();
    ((ArrayNode) less.get("channels")).remove(channel);
    ((ArrayNode) less.get("settings")).remove(channel);
    if (less.has("crossovers")) {
      ArrayNode crossovers = (ArrayNode) less.get("crossovers");
      for (int i = crossovers.size() - 1; i >= 0; i--) {
        if (crossovers.get(i).toString().contains('"' + id + '"')) {
          crossovers.remove(i);
        }
      }
    }
    return less;
  }

  /** All of it. */
  static void hold(long seed) {
    ObjectNode plan = RandomPlans.of(seed);
    Answer<PlanReviewResult> answer = review(plan);
    everyNumberIsOne(answer.result(), "");
    everyNumberIsOne(answer.findings(), "findings");
    trimsAndDelaysStartAtNothing(answer.result());
    theSheetGivesTheHeadline(plan, answer);
    leftAndRightSwapTheAnswers(plan, answer.result());
    aChannelTurnedOffTakesItsPart(plan, answer);
  }
}
