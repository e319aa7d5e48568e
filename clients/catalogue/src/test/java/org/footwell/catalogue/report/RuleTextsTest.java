package org.footwell.catalogue.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.footwell.Committed;
import org.footwell.catalogue.input.PartNumbers;
import org.junit.jupiter.api.Test;

class RuleTextsTest {

  @Test
  void everyFindingInTheContractHasATextAndNoOther() throws IOException {
    String contract = Files.readString(Committed.PROJECT.resolve("openapi/footwell-v1.yaml"));
    int post = contract.indexOf("\n    post:\n", contract.indexOf("\n  /v1/driver-check:\n"));
    String listed =
        contract.substring(
            contract.indexOf("**Findings**", post), contract.indexOf("**Sources**", post));
    Set<String> codes = new TreeSet<>();
    Matcher code = Pattern.compile("- `([a-z-]+)`").matcher(listed);
    while (code.find()) {
      codes.add(code.group(1));
    }
    assertEquals(
        codes,
        RuleTexts.codes().stream()
            .filter(text -> !text.startsWith("refused-"))
            .filter(text -> !text.equals(PartNumbers.CONTRADICTED))
            .collect(Collectors.toCollection(TreeSet::new)));
  }

  @Test
  void aCodeThatIsNewerIsReadOut() {
    assertEquals("coil too hot", RuleTexts.of("coil-too-hot"));
  }
}
