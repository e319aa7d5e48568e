package org.footwell.calculation.rule;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;

/** Reads the rules that stand beside a record. */
public final class Rules {

  private Rules() {}

  /** The rules of a record in a fixed order, after them those of what it implements. */
  public static List<FieldRule> of(Class<?> record) {
    List<FieldRule> rules = new ArrayList<>(declaredOn(record));
    for (Class<?> form : record.getInterfaces()) {
      rules.addAll(of(form));
    }
    return List.copyOf(rules);
  }

  private static List<FieldRule> declaredOn(Class<?> record) {
    List<FieldRule> rules = new ArrayList<>();
    for (Needed one : record.getAnnotationsByType(Needed.class)) {
      rules.add(new AllNeeded(List.of(one.value())));
    }
    for (ExactlyOne one : record.getAnnotationsByType(ExactlyOne.class)) {
      rules.add(new OneOnly(List.of(one.value())));
    }
    for (AtMostOne one : record.getAnnotationsByType(AtMostOne.class)) {
      rules.add(new NoneOrOne(List.of(one.value())));
    }
    for (Needs one : record.getAnnotationsByType(Needs.class)) {
      rules.add(new Together(one.field(), List.of(one.beside())));
    }
    for (Unique one : record.getAnnotationsByType(Unique.class)) {
      rules.add(new EachOnce(List.of(one.value())));
    }
    for (RefersTo one : record.getAnnotationsByType(RefersTo.class)) {
      rules.add(new KnownName(one.field(), one.to()));
    }
    for (Ascending one : record.getAnnotationsByType(Ascending.class)) {
      rules.add(new Rising(List.of(one.value()), one.orEqual()));
    }
    for (Without one : record.getAnnotationsByType(Without.class)) {
      rules.add(new NoneOf(List.of(one.value())));
    }
    return rules;
  }

  /** Names in a row as people list them: a, b and c. */
  static String listed(List<String> names, String last) {
    int most = names.size() - 1;
    return most == 0
        ? names.get(0)
        : String.join(", ", names.subList(0, most)) + last + names.get(most);
  }

  /** A rule that only asks what is given. */
  private interface Presence extends FieldRule {

    @Override
    default boolean ofPresence() {
      return true;
    }
  }

  private record AllNeeded(List<String> fields) implements Presence {

    @Override
    public String kind() {
      return "needed";
    }

    @Override
    public String sentence() {
      return listed(fields, " and ") + (fields.size() == 1 ? " is" : " are") + " required here.";
    }

    @Override
    public boolean eachAlone() {
      return true;
    }

    @Override
    public boolean keptWith(int given, int missing, int of) {
      return missing == 0;
    }

    @Override
    public void check(List<List<Place>> places, Breaches breaches) {
      for (List<Place> field : places) {
        for (Place place : field) {
          if (place.held() && !place.given()) {
            breaches.missing(place.pointer());
          }
        }
      }
    }
  }

  private record OneOnly(List<String> fields) implements Presence {

    @Override
    public String kind() {
      return "exactly_one";
    }

    @Override
    public String sentence() {
      return "Exactly one of " + listed(fields, " and ") + ".";
    }

    @Override
    public boolean keptWith(int given, int missing, int of) {
      return given == 1;
    }

    @Override
    public void check(List<List<Place>> places, Breaches breaches) {
      long given = given(places);
      if (given != 1 && held(places)) {
        breaches.notExactlyOne(fields, given);
      }
    }
  }

  /** Alternatives within one part are none where that part is not given. */
  private static boolean held(List<List<Rule.Place>> places) {
    return places.stream().flatMap(List::stream).anyMatch(Rule.Place::held);
  }

  private record NoneOf(List<String> fields) implements Presence {

    @Override
    public String kind() {
      return "without";
    }

    @Override
    public String sentence() {
      return listed(fields, " and ")
          + (fields.size() == 1 ? " has" : " have")
          + " no meaning here.";
    }

    @Override
    public boolean keptWith(int given, int missing, int of) {
      return given == 0;
    }

    @Override
    public void check(List<List<Place>> places, Breaches breaches) {
      for (List<Place> field : places) {
        for (Place place : field) {
          if (place.given()) {
            breaches.unwanted(place.pointer(), place.value());
          }
        }
      }
    }
  }

  private record NoneOrOne(List<String> fields) implements Presence {

    @Override
    public String kind() {
      return "at_most_one";
    }

    @Override
    public String sentence() {
      return "At most one of " + listed(fields, " and ") + ".";
    }

    @Override
    public boolean keptWith(int given, int missing, int of) {
      return given <= 1;
    }

    @Override
    public void check(List<List<Place>> places, Breaches breaches) {
      if (given(places) > 1) {
        Place second =
            places.stream().flatMap(List::stream).filter(Place::given).skip(1).findFirst().get();
        breaches.notAtMostOne(second.pointer(), fields);
      }
    }
  }

  private static long given(List<List<Rule.Place>> places) {
    long given = 0;
    for (List<Rule.Place> field : places) {
      if (isGiven(field)) {
        given++;
      }
    }
    return given;
  }

  private static boolean isGiven(List<Rule.Place> field) {
    for (Rule.Place place : field) {
      if (place.given()) {
        return true;
      }
    }
    return false;
  }

  private record Together(String field, List<String> beside) implements Presence {

    @Override
    public String kind() {
      return "needs";
    }

    @Override
    public List<String> fields() {
      List<String> all = new ArrayList<>(List.of(field));
      all.addAll(beside);
      return all;
    }

    @Override
    public String sentence() {
      return beside.equals(List.of(field))
          ? field + " in every entry or in none."
          : field + " needs " + listed(beside, " and ") + ".";
    }

    @Override
    public boolean keptWith(int given, int missing, int of) {
      return given == 0 || given == of;
    }

    @Override
    public void check(List<List<Place>> places, Breaches breaches) {
      // An empty list, the default of many, asks for nothing beside it.
      if (places.get(0).stream().anyMatch(p -> p.given() && !List.of().equals(p.value()))) {
        places.stream()
            .skip(1)
            .flatMap(List::stream)
            .filter(place -> !place.given())
            .forEach(place -> breaches.missingBeside(place.pointer(), field));
      }
    }
  }

  private record EachOnce(List<String> fields) implements FieldRule {

    @Override
    public String kind() {
      return "unique";
    }

    @Override
    public String sentence() {
      return "No two alike in "
          + listed(fields, " and ")
          + (fields.size() == 1 ? "." : " together.");
    }

    @Override
    public void check(List<List<Place>> places, Breaches breaches) {
      Set<List<Object>> seen = new HashSet<>();
      for (int i = 0; i < places.get(0).size(); i++) {
        int entry = i;
        List<Object> values =
            places.stream()
                .map(field -> field.get(entry).value())
                .collect(Collectors.toCollection(ArrayList::new));
        if (values.stream().allMatch(Objects::nonNull) && !seen.add(values)) {
          String given = values.stream().map(Object::toString).collect(Collectors.joining(" and "));
          breaches.duplicate(places.get(0).get(i).pointer(), given);
        }
      }
    }
  }

  private record KnownName(String field, String to) implements FieldRule {

    @Override
    public String kind() {
      return "refers_to";
    }

    @Override
    public List<String> fields() {
      return List.of(field, to);
    }

    @Override
    public String sentence() {
      return field + " is one of " + to + ".";
    }

    @Override
    public boolean keptWith(int given, int missing, int of) {
      return given == 0;
    }

    @Override
    public void check(List<List<Place>> places, Breaches breaches) {
      List<String> known =
          places.get(1).stream().filter(Place::given).map(p -> p.value().toString()).toList();
      for (Place place : places.get(0)) {
        if (place.given() && !known.contains(place.value().toString())) {
          breaches.unknownName(place.pointer(), place.value().toString(), known, to);
        }
      }
    }
  }

  private record Rising(List<String> fields, boolean orEqual) implements FieldRule {

    @Override
    public String kind() {
      return orEqual ? "not_falling" : "ascending";
    }

    @Override
    public String sentence() {
      String where = fields.size() == 1 ? " from entry to entry." : " in this order.";
      boolean one = fields.size() == 1;
      String how = orEqual ? (one ? " does not fall" : " do not fall") : (one ? " rises" : " rise");
      return listed(fields, " and ") + how + where;
    }

    @Override
    public boolean keptWith(int given, int missing, int of) {
      return given <= 1;
    }

    @Override
    public void check(List<List<Place>> places, Breaches breaches) {
      double before = Double.NaN;
      for (List<Place> field : places) {
        for (Place place : field) {
          if (place.given()) {
            double here = ((Number) place.value()).doubleValue();
            if (orEqual ? here < before : here <= before) {
              breaches.notAscending(place.pointer(), here, before, orEqual);
            }
            before = here;
          }
        }
      }
    }
  }
}
