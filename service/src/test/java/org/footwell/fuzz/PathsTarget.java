package org.footwell.fuzz;

import static org.footwell.fuzz.Refusals.requireEqual;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.StringJoiner;
import java.util.stream.Stream;
import org.footwell.Calculations;
import org.footwell.acoustic.enclosure.ClosedBox;
import org.footwell.calculation.Answer;
import org.footwell.calculation.Engine;
import org.footwell.calculation.Place;
import org.footwell.calculation.Shape;
import org.footwell.calculation.UnknownPath;
import org.footwell.calculation.text.Reader;
import org.footwell.electrical.load.WiringLoad;
import org.footwell.parts.plan.VehiclePlan;
import org.footwell.web.request.Answered;
import org.footwell.web.request.Digits;
import org.footwell.web.request.Endpoint;
import org.footwell.web.request.Query;
import org.footwell.web.request.Rendering;

/**
 * The same text as a query, as a path or pointer into a plan, as the place a question is about, and as
 * a figure of an answer. What is read can be written and read again, and leads to the same.
 */
final class PathsTarget implements Target {

  private static final Engine ENGINE = new Engine();
  private static final Duration ENOUGH = Duration.ofSeconds(10);
  private static final Endpoint<?, ?> LOAD = new Endpoint<>(new WiringLoad(), ENGINE, ENOUGH);
  private static final Endpoint<?, ?> BOX = new Endpoint<>(new ClosedBox(), ENGINE, ENOUGH);

  private static final byte[] PLAN = PlanTarget.example("camper-van");
  private static final Map<?, ?> DOCUMENT = (Map<?, ?>) Endpoint.untyped(PLAN);
  private static final VehiclePlan READ = ENGINE.bind(VehiclePlan.class, DOCUMENT, false);
  private static final Answer<?> ANSWER =
      LOAD.answerCells(Map.of("network", "4||4"), false, Reader.ANYONE).answer();

  /** More than these a query must not have. */
  private static final int MOST_PARAMETERS = 1_000;

  @Override
  public void read(byte[] given) throws Exception {
    String text = new String(given, StandardCharsets.UTF_8);
    query(text);
    path(text);
    Refusals.orNull(() -> BOX.answerOf(Calculations.PLAN, PLAN, text, false, Reader.ANYONE));
    Refusals.orNull(() -> Rendering.part(LOAD.result(), ANSWER, text, Digits.ALL));
  }

  private static void query(String raw) throws Exception {
    Query query = Refusals.orNull(() -> Query.of(raw, LOAD.options()));
    Map<String, Object> tree = query == null ? null : Refusals.orNull(query::tree);
    if (tree != null) {
      StringJoiner written = new StringJoiner("&");
      write("", tree, written);
      if (written.toString().split("&", -1).length <= MOST_PARAMETERS) {
        requireEqual(
            tree,
            Query.of(written.toString(), LOAD.options()).tree(),
            "a query written and read again");
      }
      Answered<?, ?> answered =
          Refusals.orNull(() -> LOAD.answerCells(tree, query.workings(), Reader.ANYONE));
      Refusals.require(answered == null || tree.containsKey("network"), "answered what was asked");
    }
  }

  private static void write(String path, Map<?, ?> tree, StringJoiner into) {
    tree.forEach(
        (name, value) -> {
          String here = path + encoded((String) name);
          if (value instanceof Map<?, ?> below) {
            write(here + ".", below, into);
          } else {
            into.add(here + "=" + encoded((String) value));
          }
        });
  }

  private static String encoded(String text) {
    return URLEncoder.encode(text, StandardCharsets.UTF_8);
  }

  private static void path(String text) throws Exception {
    Shape<VehiclePlan> shape = Shape.of(VehiclePlan.class);
    try {
      Place place = shape.place(text, DOCUMENT);
      requireEqual(
          text.chars().filter(c -> c == (text.startsWith("/") ? '/' : '.')).count(),
          place.pointer().chars().filter(c -> c == '/').count() - (text.startsWith("/") ? 0 : 1),
          "every part of a path leads one step");
      for (String same : List.of(place.pointer(), place.path())) {
        requireEqual(place.pointer(), shape.place(same, DOCUMENT).pointer(), "the same place");
      }
      requireEqual(
          String.valueOf(place.of(READ)),
          String.valueOf(shape.place(place.pointer(), DOCUMENT).of(READ)),
          "the same value");
    } catch (UnknownPath none) {
      none.nearest().ifPresent(nearest -> leads(shape, nearest));
    }
  }

  /** Nobody is sent from one wrong path to another. */
  private static void leads(Shape<VehiclePlan> shape, String nearest) {
    try {
      shape.place(nearest, DOCUMENT);
    } catch (UnknownPath misled) {
      throw new AssertionError("the nearest path leads nowhere: " + nearest, misled);
    }
  }

  @Override
  public List<byte[]> seeds() {
    return Stream.of(
            "network=(4%2B4)%7C%7C(4%2B4)&amplifier.minimum_ohm=4&workings=true",
            "network=a%7C%7Cb&coils.0.name=a&coils.0.rated_ohm=4&coils.1.name=b&coils.1.rated_ohm=2",
            "coils.*.rated_ohm=4,2,&coils.*.name=a%2Cb,c&network=a&lang=de&errors=text",
            "new_parts.sub_25_dual.driver.fs_hz",
            "/drivers/0/position/x_m",
            "/drivers/sub_left",
            "load_ohm",
            "coils.0.power_share",
            "findings.0.code")
        .map(text -> text.getBytes(StandardCharsets.UTF_8))
        .toList();
  }
}
