package org.footwell.fitting.ring;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import de.siegmar.fastcsv.reader.CsvReader;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import javax.imageio.ImageIO;
import org.footwell.fitting.ring.drawing.DrawnRing;
import org.footwell.fitting.ring.drawing.DxfDrawing;
import org.footwell.fitting.ring.drawing.StlFile;
import org.footwell.fitting.ring.drawing.SvgDrawing;
import org.footwell.reference.CircuitScript;
import org.footwell.reference.ReferenceTable.Row;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Has programs of others read solid and drawings, and measures a printed drawing. */
@Tag("workbench")
class RingReadersIT {

  private static final Path SCRIPT =
      Path.of("src/test/resources/reference/readers/read-ring.sh").toAbsolutePath();
  private static final double DOTS_PER_MM = 10;

  @TempDir static Path folder;

  private static Map<String, DrawnRing> rings;
  private static List<Row> read;

  @BeforeAll
  static void read() throws IOException, InterruptedException {
    rings = RingCases.all();
    for (Map.Entry<String, DrawnRing> ring : rings.entrySet()) {
      Files.write(folder.resolve(ring.getKey() + ".stl"), StlFile.of(ring.getValue()));
      Files.write(folder.resolve(ring.getKey() + ".dxf"), DxfDrawing.of(ring.getValue()));
      Files.write(folder.resolve(ring.getKey() + ".svg"), SvgDrawing.of(ring.getValue()));
    }
    Process process =
        new ProcessBuilder("bash", SCRIPT.toString(), folder.toString())
            .redirectError(ProcessBuilder.Redirect.INHERIT)
            .start();
    String output = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertEquals(0, process.waitFor(), "are admesh, ezdxf and librsvg installed?");
    read = CsvReader.builder().ofNamedCsvRecord(output).stream().map(Row::new).toList();
  }

  @Test
  void everySolidIsClosedAndItsNormalsFaceOutwards() {
    assertEquals(rings.size(), read.size());
    for (Row row : read) {
      assertEquals(0, row.number("open_edges"), row::toString);
      assertEquals(0, row.number("normals_mended"), row::toString);
    }
  }

  @Test
  void noDrawingHasMistakes() {
    assertEquals(0, read.stream().mapToDouble(row -> row.number("dxf_mistakes")).sum());
  }

  @Test
  void theCommittedTableIsWhatTheProgramsSay() {
    Map<String, Row> now =
        read.stream().collect(Collectors.toMap(row -> row.text("ring"), row -> row));
    for (Row committed : FitOutsideChecks.readers()) {
      Row row = now.get(committed.text("ring"));
      for (String column : List.of("triangles", "parts", "dxf_circle_count")) {
        CircuitScript.assertWithin(0, committed, column, row.number(column));
      }
      for (String column : List.of("volume_mm3", "dxf_face_mm2")) {
        CircuitScript.assertWithin(1e-6, committed, column, row.number(column));
      }
    }
  }

  @Test
  void printedAtItsOwnSizeTheDrawingMeasuresWhatItSays() throws IOException {
    BufferedImage page = ImageIO.read(folder.resolve("round.png").toFile());
    // The outer edge of 181.5 mm, its line of 0.25 mm and the margins.
    assertEquals(201.5, page.getWidth() / DOTS_PER_MM, 0.11);
    int middle = (int) (DOTS_PER_MM * (10 + 181.5 / 2));
    int first = 0;
    while (!dark(page, first, middle)) {
      first++;
    }
    int last = page.getWidth() - 1;
    while (!dark(page, last, middle)) {
      last--;
    }
    assertEquals(181.5 + 0.25, (last - first + 1) / DOTS_PER_MM, 0.2);
    assertEquals(50 + 0.25, longestRun(page) / DOTS_PER_MM, 0.2);
  }

  /** The longest dark line across below the ring: the ruler. */
  private static int longestRun(BufferedImage page) {
    int longest = 0;
    for (int y = page.getHeight() - 200; y < page.getHeight(); y++) {
      int run = 0;
      for (int x = 0; x < page.getWidth(); x++) {
        run = dark(page, x, y) ? run + 1 : 0;
        longest = Math.max(longest, run);
      }
    }
    assertTrue(longest > 0);
    return longest;
  }

  private static boolean dark(BufferedImage page, int x, int y) {
    return (page.getRGB(x, y) & 0xff) < 200;
  }
}
