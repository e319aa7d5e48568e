package org.footwell.web.batch;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.footwell.calculation.Fault;
import org.footwell.calculation.text.Phrase;
import org.footwell.calculation.text.Reader;
import org.footwell.web.request.Problem;
import org.footwell.web.request.WebWords;

/**
 * The problems a batch has told so far, in the order of its rows. Of one kind, the same codes at the
 * same fields, the first are told in full; the rest would make a short body a huge answer.
 */
final class Told {

  /** A catalogue checked a thousand rows at a time, as is usual, is told of every one in full. */
  static final int IN_FULL = 1_000;

  /** Kinds that are kept in mind: a caller who makes up field names must not fill the memory. */
  private static final int MOST_KINDS = 1_000;

  private final Reader reader;
  private final Map<List<String>, Kind> kinds = new HashMap<>();

  private static final class Kind {
    private final Long firstLine;
    private int count;

    Kind(Long firstLine) {
      this.firstLine = firstLine;
    }
  }

  Told(Reader reader) {
    this.reader = reader;
  }

  /** The problem as it is to be told: in full, or by the line that has faults of the same kind. */
  Problem next(Problem problem) {
    if (problem.errors() == null) {
      return problem;
    }
    List<String> codes = problem.errors().stream().flatMap(Told::codeAndField).toList();
    Kind kind = kinds.get(codes);
    if (kind == null) {
      kind = new Kind(problem.line());
      if (kinds.size() < MOST_KINDS) {
        kinds.put(codes, kind);
      }
    }
    kind.count++;
    return kind.count <= IN_FULL
        ? problem
        : problem.inShort(Phrase.of(WebWords.SAME_KIND).with("line", kind.firstLine).said(reader));
  }

  private static Stream<String> codeAndField(Fault fault) {
    return Stream.of(fault.code(), fault.pointer());
  }
}
