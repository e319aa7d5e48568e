package org.footwell.sheet;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.function.Supplier;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.text.PDFTextStripper;

/** Sheets on paper, read back. */
public final class Papers {

  private Papers() {}

  /**
   * What stands on a paper, spaces and ends of lines alike, which is the same bytes when printed again, tagged, in its
   * language, and does nothing by itself.
   */
  public static String text(String language, Supplier<byte[]> printed) throws IOException {
    byte[] paper = printed.get();
    assertArrayEquals(paper, printed.get(), "printed again");
    try (PDDocument document = Loader.loadPDF(paper)) {
      assertTrue(document.getDocumentCatalog().getMarkInfo().isMarked(), "tagged");
      assertEquals(language, document.getDocumentCatalog().getLanguage());
      assertNull(document.getDocumentCatalog().getOpenAction());
      for (PDPage page : document.getPages()) {
        assertTrue(page.getAnnotations().isEmpty(), "nothing to click");
      }
      return spaced(new PDFTextStripper().getText(document));
    }
  }

  /** A text with one space wherever there is room. */
  public static String spaced(String text) {
    return text.replaceAll("[\\s\u00a0]+", " ").strip();
  }
}
