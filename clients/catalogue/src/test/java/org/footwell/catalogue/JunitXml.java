package org.footwell.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** JUnit XML as a reader sees it: its counts must be those of its cases. */
public record JunitXml(List<String> names, int tests, int failures, int errors) {

  /** Reads a report and holds its counts against what is in it. */
  public static JunitXml read(Path file) throws Exception {
    Document document =
        DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(file.toFile());
    List<String> names = new ArrayList<>();
    NodeList cases = document.getElementsByTagName("testcase");
    for (int i = 0; i < cases.getLength(); i++) {
      names.add(((Element) cases.item(i)).getAttribute("name"));
    }
    for (String level : List.of("testsuites", "testsuite")) {
      Element suite = (Element) document.getElementsByTagName(level).item(0);
      assertEquals(names.size(), count(suite, "tests"));
      assertEquals(document.getElementsByTagName("failure").getLength(), count(suite, "failures"));
      assertEquals(document.getElementsByTagName("error").getLength(), count(suite, "errors"));
    }
    Element suite = (Element) document.getElementsByTagName("testsuite").item(0);
    return new JunitXml(names, names.size(), count(suite, "failures"), count(suite, "errors"));
  }

  private static int count(Element suite, String attribute) {
    return Integer.parseInt(suite.getAttribute(attribute));
  }
}
