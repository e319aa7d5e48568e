package org.footwell.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** Names that would be something else than names to whoever forgets to escape them. */
public final class HostileNames {

  public static final List<String> ALL =
      List.of(
          "<script>alert(1)</script>",
          "\" onmouseover=\"alert(1)",
          "</title><img src=x onerror=alert(1)>",
          "&amp;lt; & ]]> <!-- -->",
          "\u202Eabc\u05D0\u05D1 \u0627\u0644",
          "\uD83D\uDD0A loud \uD800",
          "a".repeat(80));

  private HostileNames() {}

  /** A page shows a name as its letters and is made of nothing of it. */
  public static void assertOnlyText(String name, Document page) {
    for (String tag : List.of("script", "img")) {
      assertEquals(0, page.getElementsByTagName(tag).getLength(), name);
    }
    NodeList all = page.getElementsByTagName("*");
    for (int i = 0; i < all.getLength(); i++) {
      assertFalse(((Element) all.item(i)).hasAttribute("onmouseover"), name);
    }
    String text = page.getDocumentElement().getTextContent();
    assertTrue(text.contains(name.replace('\uD800', '\uFFFD')), name);
  }
}
