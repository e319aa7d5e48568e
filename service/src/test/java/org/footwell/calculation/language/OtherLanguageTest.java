package org.footwell.calculation.language;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import io.swagger.v3.oas.annotations.media.Schema;
import java.time.Duration;
import java.util.List;
import org.footwell.calculation.Answer;
import org.footwell.calculation.Calculation;
import org.footwell.calculation.Card;
import org.footwell.calculation.Caution;
import org.footwell.calculation.Engine;
import org.footwell.calculation.FaultCode;
import org.footwell.calculation.Finding;
import org.footwell.calculation.FindingCode;
import org.footwell.calculation.Refused;
import org.footwell.calculation.Run;
import org.footwell.calculation.Verdict;
import org.footwell.calculation.text.Phrase;
import org.footwell.calculation.text.Reader;
import org.footwell.calculation.text.Words;
import org.junit.jupiter.api.Test;

/** Another language is one more text file, and nothing else: shown with one made up for tests. */
class OtherLanguageTest {

  private static final Reader OTHER = Reader.in("qaa").orElseThrow();

  private enum Remarks implements FindingCode {
    TOO_LOUD,
    ONLY_ENGLISH;

    @Override
    public Verdict level() {
      return Verdict.WARNING;
    }
  }

  private enum Refusal implements FaultCode {
    TOO_QUIET
  }

  private enum Care implements Caution {
    EARS
  }

  private enum Side implements Words {
    FRONT,
    AT_METRES
  }

  /** What is asked. */
  public record Level(@Schema(description = "Level, dB") Double levelDb) {}

  /** What comes out. */
  public record Heard(@Schema(description = "Level, dB") double levelDb) {}

  private static final class Loudness implements Calculation<Level, Heard> {

    @Override
    public Card<Level, Heard> card() {
      return Card.of("loudness", Level.class, Heard.class)
          .title("Loudness")
          .purpose("Says how loud it is.")
          .example("{}")
          .sources()
          .limits()
          .findings(Remarks.values())
          .refusals(Refusal.values())
          .cautions(Care.values())
          .build();
    }

    @Override
    public Heard compute(Level q, Run run) {
      if (q.levelDb() < 0) {
        run.refuse(Refusal.TOO_QUIET)
            .at("/level_db")
            .given(q.levelDb())
            .allowed(Phrase.of(Side.AT_METRES).with("distance", 2));
      }
      run.find(Remarks.TOO_LOUD)
          .value(q.levelDb())
          .own("name", "Bass")
          .with("side", Side.FRONT)
          .with("by", 3);
      run.find(Remarks.ONLY_ENGLISH);
      return new Heard(q.levelDb());
    }
  }

  private static Answer<Heard> answer(double levelDb, Reader reader) {
    return new Engine()
        .answer(new Loudness(), new Level(levelDb), false, Duration.ofSeconds(10), reader);
  }

  @Test
  void findingsAdviceAndCautionsAreSaidInTheReadersLanguage() {
    Answer<Heard> answer = answer(101.26, OTHER);
    Finding finding = answer.findings().get(0);
    assertEquals("Vorn spielt Bass mit 101,3 dB.", finding.text());
    assertEquals("3 dB leiser drehen.", finding.advice());
    assertEquals(List.of("Auf die Ohren achten."), answer.safety());
    Finding english = answer(101.26, Reader.ANYONE).findings().get(0);
    assertEquals("Bass plays 101.3 dB, in the front.", english.text());
    assertEquals("Turn Bass down by 3 dB.", english.advice());
  }

  @Test
  void whatIsNotTranslatedIsSaidInEnglish() {
    assertEquals("This is said in English only.", answer(101.26, OTHER).findings().get(1).text());
  }

  @Test
  void soAreFaultsWithWhatIsAllowed() {
    Refused refused = assertThrows(Refused.class, () -> answer(-1, OTHER));
    assertEquals("level_db ist -1.0, erlaubt ist In 2 m.", refused.faults(OTHER).get(0).detail());
    assertEquals("In 2 m", refused.faults(OTHER).get(0).allowed());
    assertEquals("level_db is -1.0; it must be at 2 m.", refused.faults().get(0).detail());
  }
}
