package org.footwell.catalogue.report;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;
import org.footwell.catalogue.row.CheckedRow;
import org.footwell.catalogue.row.Level;
import org.footwell.catalogue.row.Remark;
import org.footwell.catalogue.row.SeenNames;

/**
 * JUnit XML: one case for each finding, named by part number, rule and field, and one for each row
 * without any. The counts stand before the cases, so these wait in a file of their own.
 */
public final class JunitReport implements Report {

  private static final String UTF8 = "UTF-8";

  private final String catalogue;
  private final Level failFrom;
  private final ReportFile file;
  private final ReportFile cases;
  private final Path casesPart;
  private final XMLStreamWriter xml;
  private final SeenNames names = new SeenNames(4);
  private long tests;
  private long failures;
  private long errors;

  /**
   * Begins the report.
   *
   * @param failFrom the lowest level that is a failure
   */
  public JunitReport(Path file, String catalogue, Level failFrom) throws IOException {
    this.catalogue = catalogue;
    this.failFrom = failFrom;
    this.file = new ReportFile(file);
    this.casesPart = file.resolveSibling(file.getFileName() + ".cases");
    this.cases = new ReportFile(casesPart);
    this.xml = writer(cases.out());
  }

  private static XMLStreamWriter writer(OutputStream out) throws IOException {
    try {
      return XMLOutputFactory.newFactory().createXMLStreamWriter(out, UTF8);
    } catch (XMLStreamException impossible) {
      throw new IOException(impossible);
    }
  }

  @Override
  public void add(CheckedRow row) throws IOException {
    try {
      if (row.remarks().isEmpty()) {
        begin(row, "ok");
        end();
      }
      for (Remark remark : row.remarks()) {
        add(row, remark);
      }
    } catch (XMLStreamException failure) {
      throw new IOException(failure);
    }
  }

  private void add(CheckedRow row, Remark remark) throws XMLStreamException {
    begin(row, remark.field().isEmpty() ? remark.code() : remark.code() + " " + remark.field());
    String text = catalogue + ", line " + row.line() + ": " + remark.text();
    if (remark.level().atLeast(failFrom)) {
      failures += remark.refused() ? 0 : 1;
      errors += remark.refused() ? 1 : 0;
      xml.writeStartElement(remark.refused() ? "error" : "failure");
      xml.writeAttribute("type", remark.level() + " " + remark.code());
      xml.writeAttribute("message", legal(remark.text()));
    } else {
      xml.writeStartElement("system-out");
      text = remark.level() + ": " + text;
    }
    xml.writeCharacters(legal(text));
    xml.writeEndElement();
    end();
  }

  private void begin(CheckedRow row, String rule) throws XMLStreamException {
    tests++;
    xml.writeStartElement("testcase");
    xml.writeAttribute("classname", legal(catalogue));
    xml.writeAttribute("name", legal(unique(row, row.name() + ": " + rule)));
    xml.writeAttribute("time", "0");
  }

  private void end() throws XMLStreamException {
    xml.writeEndElement();
    xml.writeCharacters("\n");
  }

  /** Some readers drop a second case of the same name, such as that of a part listed twice. */
  private String unique(CheckedRow row, String name) {
    String unique = name;
    for (int i = 1; !names.add(unique); i++) {
      unique = name + " (line " + row.line() + (i == 1 ? ")" : ", " + i + ")");
    }
    return unique;
  }

  /** Without the characters that XML cannot carry at all. */
  private static String legal(String text) {
    return text.replaceAll("[^\\t\\n\\r\\x20-\\uD7FF\\uE000-\\uFFFD\\x{10000}-\\x{10FFFF}]", "�");
  }

  @Override
  public void finish(Tally tally) throws IOException {
    try {
      xml.close();
      cases.complete();
      XMLStreamWriter whole = writer(file.out());
      whole.writeStartDocument(UTF8, "1.0");
      whole.writeCharacters("\n");
      suite(whole, "testsuites", "footwell-catalogue");
      suite(whole, "testsuite", catalogue);
      whole.writeCharacters("\n");
      whole.flush();
      Files.copy(casesPart, file.out());
      whole.writeEndDocument();
      whole.close();
    } catch (XMLStreamException failure) {
      throw new IOException(failure);
    }
    file.complete();
    Files.delete(casesPart);
  }

  private void suite(XMLStreamWriter whole, String element, String name) throws XMLStreamException {
    whole.writeStartElement(element);
    whole.writeAttribute("name", legal(name));
    whole.writeAttribute("tests", Long.toString(tests));
    whole.writeAttribute("failures", Long.toString(failures));
    whole.writeAttribute("errors", Long.toString(errors));
    whole.writeAttribute("skipped", "0");
    whole.writeAttribute("time", "0");
  }

  @Override
  public void close() throws IOException {
    cases.close();
    file.close();
    Files.deleteIfExists(casesPart);
  }
}
