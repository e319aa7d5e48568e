package org.footwell.web.request;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Locale;
import org.footwell.acoustic.level.SoundLevel;
import org.footwell.acoustic.level.SoundLevelRequest;
import org.footwell.acoustic.level.SoundLevelResult;
import org.footwell.calculation.Calculation;
import org.footwell.calculation.Card;
import org.footwell.calculation.Engine;
import org.footwell.calculation.FindingCode;
import org.footwell.calculation.Run;
import org.footwell.calculation.Shown;
import org.footwell.calculation.text.Reader;
import org.footwell.calculation.text.Reader.Units;
import org.junit.jupiter.api.Test;

class ViewTest {

  /** The sound level, said in a sentence. */
  private static final class InASentence
      implements Calculation<SoundLevelRequest, SoundLevelResult> {
    private final SoundLevel level = new SoundLevel();

    @Override
    public Card<SoundLevelRequest, SoundLevelResult> card() {
      return Card.of("sentence", SoundLevelRequest.class, SoundLevelResult.class)
          .title("Sentence")
          .purpose("Says it.")
          .example(level.card().example())
          .sources()
          .limits()
          .findings(level.card().findings().toArray(FindingCode[]::new))
          .view("txt", "text/x-sentence", "a sentence", InASentence::said)
          .build();
    }

    private static byte[] said(Shown<SoundLevelRequest, SoundLevelResult> shown) {
      return Rendering.utf8(
          shown.request().distanceM()
              + " "
              + shown.answer().verdict()
              + " "
              + shown.reader().language()
              + " "
              + shown.reader().units());
    }

    @Override
    public SoundLevelResult compute(SoundLevelRequest request, Run run) {
      return level.compute(request, run);
    }
  }

  @Test
  void aViewIsGivenTheRequestTheAnswerTheLanguageAndTheUnits() {
    InASentence calculation = new InASentence();
    Endpoint<SoundLevelRequest, SoundLevelResult> endpoint =
        new Endpoint<>(calculation, new Engine(), Duration.ofSeconds(10));
    Answered<SoundLevelRequest, SoundLevelResult> answered =
        endpoint.answer(Rendering.utf8(calculation.card().example()), false, Reader.ANYONE);
    Format format = endpoint.formats().wanted("txt", null);
    byte[] said =
        Rendering.render(
            endpoint, answered, format, Digits.ALL, new Reader(Locale.ENGLISH, Units.METRIC));
    assertEquals(
        answered.request().distanceM() + " " + answered.answer().verdict() + " en METRIC",
        new String(said, StandardCharsets.UTF_8));
  }
}
