package org.footwell.acoustic.driver;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.footwell.Answers;
import org.footwell.acoustic.driver.CatalogueSample.Row;
import org.footwell.acoustic.driver.sheet.Figure;
import org.footwell.calculation.Answer;
import org.footwell.calculation.Engine;
import org.footwell.calculation.Verdict;
import org.junit.jupiter.api.Test;

/** The made-up catalogue: every planted fault is found, and what is in order stays unblamed. */
class CatalogueTest {

  private static final Engine ENGINE = new Engine();
  private static final List<Row> ROWS = CatalogueSample.rows(5000, 1);

  /** Faults that leave only one figure to blame. */
  private static final Set<PlantedFault> NAMED =
      Set.of(
          PlantedFault.MMS_IN_KG,
          PlantedFault.SD_IN_M2,
          PlantedFault.SD_IN_MM2,
          PlantedFault.VAS_IN_M3,
          PlantedFault.CMS_IN_UM_PER_N,
          PlantedFault.CMS_IN_M_PER_N,
          PlantedFault.FS_IN_KHZ,
          PlantedFault.BL_POINT_MISPLACED,
          PlantedFault.QES_AND_QTS_SLIPPED,
          PlantedFault.QES_AND_QMS_EXCHANGED,
          PlantedFault.SENSITIVITY_INFLATED);

  static Answer<DriverCheckResult> check(Row row) {
    Map<String, Object> tree = new HashMap<>();
    Map<String, Object> sensitivity = new HashMap<>();
    row.cells()
        .forEach(
            (column, cell) -> {
              if (column.startsWith("sensitivity.")) {
                sensitivity.put(column.substring("sensitivity.".length()), cell);
              } else {
                tree.put(column, cell);
              }
            });
    if (!sensitivity.isEmpty()) {
      tree.put("sensitivity", sensitivity);
    }
    return ENGINE.answer(
        new DriverCheck(),
        ENGINE.bind(DriverCheckRequest.class, tree, true),
        false,
        Duration.ofSeconds(10));
  }

  private static String shown(Row row, Answer<DriverCheckResult> answer) {
    return row.fault() + " " + row.cells() + " " + answer.findings();
  }

  @Test
  void everyPlantedFaultIsFoundAndEveryKindIsPlanted() {
    Set<PlantedFault> planted = new HashSet<>();
    List<String> missed = new ArrayList<>();
    for (Row row : ROWS) {
      if (row.fault() != null) {
        planted.add(row.fault());
        Answer<DriverCheckResult> answer = check(row);
        if (Answers.codes(answer).stream().noneMatch(row.fault().codes()::contains)) {
          missed.add(shown(row, answer));
        }
      }
    }
    assertEquals(List.of(), missed);
    assertEquals(PlantedFault.values().length, planted.size());
  }

  @Test
  void noCleanRowIsStoppedAndNoneIsWarnedAbout() {
    List<String> blamed = new ArrayList<>();
    int clean = 0;
    for (Row row : ROWS) {
      if (row.fault() == null) {
        clean++;
        Answer<DriverCheckResult> answer = check(row);
        if (answer.verdict().compareTo(Verdict.WARNING) >= 0) {
          blamed.add(shown(row, answer));
        }
      }
    }
    assertEquals(4500, clean);
    assertEquals(List.of(), blamed);
  }

  @Test
  void theWrongFigureIsAlwaysAmongTheSuspects() {
    List<String> wronged = new ArrayList<>();
    for (Row row : ROWS) {
      if (row.fault() != null
          && row.fault() != PlantedFault.NOMINAL_IN_INCHES
          && row.fault().codes().stream().anyMatch(code -> code.endsWith("-off"))) {
        Answer<DriverCheckResult> answer = check(row);
        String field = row.fault().column().replaceAll("\\..*", "");
        List<Figure> suspects = answer.result().suspects();
        if (suspects.stream().noneMatch(figure -> figure.field.equals(field))) {
          wronged.add(shown(row, answer));
        }
      }
    }
    assertEquals(List.of(), wronged);
  }

  @Test
  void unitSlipsNameTheFigureAndGiveItsRightValueBack() {
    for (Row row : ROWS) {
      if (row.fault() != null && NAMED.contains(row.fault())) {
        Answer<DriverCheckResult> answer = check(row);
        String field = row.fault().column().replaceAll("\\..*", "");
        assertEquals(field, answer.result().oddOneOut().field, () -> shown(row, answer));
      }
    }
  }

  @Test
  void theSameSeedGivesTheSameCatalogue() {
    assertEquals(ROWS, CatalogueSample.rows(5000, 1));
  }
}
