package org.footwell.contract;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.swagger.v3.core.util.Json;
import io.swagger.v3.core.util.Json31;
import io.swagger.v3.oas.models.OpenAPI;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.footwell.Calculations;
import org.footwell.Version;
import org.footwell.calculation.Calculation;
import org.footwell.web.request.Trees;

/** Writes the contract in both forms and the list of codes into the folder given. */
public final class WriteContract {

  private WriteContract() {}

  public static void main(String[] arguments) throws IOException {
    Path folder = Files.createDirectories(Path.of(arguments[0]));
    JsonNode plain = contract(false, Json.mapper());
    write(folder, "openapi-3.0.json", plain.toPrettyString());
    write(folder, "openapi-3.0.yaml", YamlText.of(plain));
    JsonNode newer = contract(true, Json31.mapper());
    write(folder, "openapi-3.1.json", newer.toPrettyString());
    write(folder, "openapi-3.1.yaml", YamlText.of(newer));
    writeCodes(folder);
  }

  private static JsonNode contract(boolean v31, ObjectMapper mapper) throws IOException {
    OpenAPI api = new Contract(Calculations.all(), Calculations.PLAN, Version.NUMBER, v31).build();
    JsonNode written = new ObjectMapper().readTree(mapper.writeValueAsString(api));
    return SteadyOrder.of(SaidOnce.of((ObjectNode) written));
  }

  /** The codes, for people and for programs. */
  private static void writeCodes(Path folder) throws IOException {
    List<Calculation<?, ?>> calculations = Calculations.all();
    List<PublishedCode> codes = PublishedCode.all(calculations);
    write(folder, "codes.html", CodePage.of(codes, calculations.size()));
    write(
        folder,
        "codes.json",
        Json.pretty().writeValueAsString(Trees.MAPPER.valueToTree(Map.of("codes", codes))));
  }

  private static void write(Path folder, String name, String text) throws IOException {
    Files.writeString(folder.resolve(name), text.endsWith("\n") ? text : text + "\n");
  }
}
