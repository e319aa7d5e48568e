package org.footwell.sheet;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Calendar;
import java.util.GregorianCalendar;
import java.util.TimeZone;
import java.util.concurrent.atomic.AtomicBoolean;
import org.apache.pdfbox.pdmodel.PDDocument;

/**
 * A page of well-formed markup as a tagged PDF. Its fonts come from the jar. Scripts written from right to
 * left are not turned, and characters the font lacks, emoji among them, print as {@code #}.
 */
final class Paper {

  static final String FONT = "/font/DejaVuSansCondensed.ttf";
  static final String BOLD = "/font/DejaVuSansCondensed-Bold.ttf";
  private static final String FAMILY = "sheet";
  private static final int REGULAR_WEIGHT = 400;
  private static final int BOLD_WEIGHT = 700;

  /** A page with a letter, a table and a drawing. */
  private static final String EMPTY =
      """
      <html lang="en"><head><title>-</title><meta name="subject" content="-"/>
      <style>body { font-family: sheet; } b { font-weight: bold; }</style></head>
      <body><p>-</p><table><tbody><tr><td><b>-</b></td></tr></tbody></table>
      <svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 9 9"><title>-</title><text>-</text></svg>
      </body></html>
      """;

  static {
    XRLog.setLoggingEnabled(false);
  }

  private static final AtomicBoolean PREPARED = new AtomicBoolean();

  private Paper() {}

  /** Loads at the first call what the first page would wait for, beside everything else. */
  static void prepareAside() {
    if (!PREPARED.getAndSet(true)) {
      Thread aside = new Thread(() -> pdf(EMPTY), "paper");
      aside.setDaemon(true);
      aside.start();
    }
  }

  static byte[] pdf(String markup) {
    PREPARED.set(true);
    PdfRendererBuilder builder =
        new PdfRendererBuilder()
            .useFont(() -> resource(FONT), FAMILY, REGULAR_WEIGHT, FontStyle.NORMAL, true)
            .useFont(() -> resource(BOLD), FAMILY, BOLD_WEIGHT, FontStyle.NORMAL, true)
            .useSVGDrawer(new SvgPainter())
            .usePdfUaAccessibility(true)
            .withProducer("Footwell")
            .withHtmlContent(markup, null);
    try (PdfBoxRenderer renderer = builder.buildPdfRenderer();
        PDDocument document = laidOut(renderer)) {
      ByteArrayOutputStream out = new ByteArrayOutputStream(1 << 16);
      document.getDocumentInformation().setCreationDate(noTime());
      document.getDocumentInformation().setModificationDate(noTime());
      document.setDocumentId(0L);
      document.save(out);
      return out.toByteArray();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static PDDocument laidOut(PdfBoxRenderer renderer) throws IOException {
    renderer.layout();
    return renderer.createPDFKeepOpen();
  }

  /** The service knows no clock: the day of a sheet stands on it. */
  private static Calendar noTime() {
    Calendar start = new GregorianCalendar(TimeZone.getTimeZone("UTC"));
    start.setTimeInMillis(0);
    return start;
  }

  static InputStream resource(String name) {
    return Paper.class.getResourceAsStream(name);
  }
}
