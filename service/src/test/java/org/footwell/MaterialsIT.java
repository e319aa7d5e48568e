package org.footwell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.jar.JarFile;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The bill of materials in the built jar, which is not made without a network. */
@Tag("long")
class MaterialsIT {

  private static final Path JAR =
      Committed.PROJECT.resolve(Path.of("service", "target", "footwell.jar"));

  /** Of each of these something is in the jar: of the first two the classes, of the others single files. */
  private static final Set<String> SOME =
      Set.of("javalin", "jackson-databind", "swagger-ui", "jasperreports-fonts");

  @Test
  void theJarNamesWhatItIsMadeOf() throws IOException {
    try (JarFile jar = new JarFile(JAR.toFile())) {
      JsonNode bill =
          new ObjectMapper()
              .readTree(jar.getInputStream(jar.getEntry("META-INF/sbom/footwell.cdx.json")));
      assertEquals("CycloneDX", bill.path("bomFormat").asText());
      Set<String> names = new TreeSet<>();
      for (JsonNode component : bill.path("components")) {
        names.add(component.path("name").asText());
        assertFalse(component.path("version").asText().isEmpty(), component::toString);
        assertTrue(component.path("hashes").size() > 0, component::toString);
      }
      assertTrue(names.containsAll(SOME), names::toString);
      assertFalse(names.contains("junit-jupiter"), "what only tests need is no part of it");
      assertFalse(bill.has("serialNumber"), "nothing in it differs from build to build");
      assertFalse(bill.at("/metadata").has("timestamp"), "nothing in it tells when it was built");
    }
  }
}
