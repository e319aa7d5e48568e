package org.footwell.catalogue.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.footwell.catalogue.row.CheckedRow;
import org.footwell.catalogue.row.Counted;
import org.footwell.catalogue.row.Level;
import org.footwell.catalogue.row.Remark;

/** Counts of a check. */
public final class Tally {

  /**
   * How often something was found.
   *
   * @param level as bad as it was found to be
   */
  public record Count(Level level, String code, long times) {}

  private record Key(Level level, String code) {}

  private final String catalogue;
  private final Map<Level, Long> verdicts = new EnumMap<>(Level.class);
  private final Map<Key, Long> remarks =
      new TreeMap<>(Comparator.comparing(Key::level).reversed().thenComparing(Key::code));
  private long rows;
  private long refused;
  private Baseline baseline = Baseline.empty();
  private List<String> cautions = List.of();
  private List<String> ofCatalogue = List.of();

  /**
   * Nothing counted yet.
   *
   * @param catalogue what it is called
   */
  public Tally(String catalogue) {
    this.catalogue = catalogue;
  }

  public void add(CheckedRow row) {
    rows++;
    refused += row.refused() ? 1 : 0;
    verdicts.merge(row.verdict(), 1L, Long::sum);
    for (Remark remark : row.remarks()) {
      remarks.merge(new Key(remark.level(), remark.code()), 1L, Long::sum);
    }
  }

  /** Says that known findings were left out. */
  public void withoutKnown(Baseline known) {
    baseline = known;
  }

  /** Says what there is to know about what was read. */
  public void note(List<String> sentences) {
    ofCatalogue = List.copyOf(sentences);
  }

  /** What to know about the baseline and what was read, in sentences. */
  List<String> notes() {
    List<String> notes = new ArrayList<>();
    if (!baseline.isEmpty()) {
      notes.add(
          String.format(
              "Only what is new: %s of the baseline left out, %d not found again.",
              Counted.of(baseline.met(), "finding"), baseline.gone()));
    }
    notes.addAll(ofCatalogue);
    return notes;
  }

  /** Takes note of cautions that came with the answers. */
  public void caution(List<String> sentences) {
    cautions = List.copyOf(sentences);
  }

  public List<String> cautions() {
    return cautions;
  }

  public String catalogue() {
    return catalogue;
  }

  public long rows() {
    return rows;
  }

  private long rows(Level verdict) {
    return verdicts.getOrDefault(verdict, 0L);
  }

  /** Rows with this verdict or a worse one. */
  public long rowsFrom(Level verdict) {
    return verdicts.entrySet().stream()
        .filter(entry -> entry.getKey().atLeast(verdict))
        .mapToLong(Map.Entry::getValue)
        .sum();
  }

  /** Worst first. Within a level the most frequent first. */
  public List<Count> counts() {
    return remarks.entrySet().stream()
        .map(e -> new Count(e.getKey().level(), e.getKey().code(), e.getValue()))
        .sorted(
            Comparator.comparing(Count::level)
                .thenComparing(Count::times)
                .reversed()
                .thenComparing(Count::code))
        .toList();
  }

  /** {@code 3 stop (1 of them refused), 2 warning, 0 note, 7 ok}. */
  public String verdicts() {
    String refusals = refused == 0 ? "" : " (" + refused + " of them refused)";
    return String.format(
        "%d stop%s, %d warning, %d note, %d %s",
        rows(Level.STOP),
        refusals,
        rows(Level.WARNING),
        rows(Level.NOTE),
        rows(Level.OK),
        baseline.isEmpty() ? "ok" : "without news");
  }
}
