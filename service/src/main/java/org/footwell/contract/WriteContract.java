package org.footwell.contract;

import org.footwell.calculation.Calculation;
import java.util.Map;
import java.util.List;
import io.swagger.v3.core.util.Json;
import io.swagger.v3.core.util.Json31;
import io.swagger.v3.core.util.Yaml;
import io.swagger.v3.core.util.Yaml31;
import io.swagger.v3.oas.models.OpenAPI;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.footwell.Calculations;
import org.footwell.Version;

/** Writes the contract in both forms and the list of codes into the folder given. */
public final class WriteContract {

  private WriteContract() {}

  public static void main(String[] arguments) throws IOException {
    Path folder = Files.createDirectories(Path.of(arguments[0]));
    OpenAPI plain = new Contract(Calculations.all(), Version.NUMBER, false).build();
    write(folder, "openapi-3.0.json", Json.pretty().writeValueAsString(plain));
    write(folder, "openapi-3.0.yaml", Yaml.pretty().writeValueAsString(plain));
    OpenAPI newer = new Contract(Calculations.all(), Version.NUMBER, true).build();
    write(folder, "openapi-3.1.json", Json31.pretty().writeValueAsString(newer));
    write(folder, "openapi-3.1.yaml", Yaml31.pretty().writeValueAsString(newer));
    writeCodes(folder);
  }

  /** The codes, for people and for programs. */
  private static void writeCodes(Path folder) throws IOException {
    List<Calculation<?, ?>> calculations = Calculations.all();
    List<PublishedCode> codes = PublishedCode.all(calculations);
    write(folder, "codes.html", CodePage.of(codes, calculations.size()));
    write(folder, "codes.json", Json.pretty().writeValueAsString(Map.of("codes", codes)));
  }

  private static void write(Path folder, String name, String text) throws IOException {
    Files.writeString(folder.resolve(name), text.endsWith("\n") ? text : text + "\n");
  }
}
