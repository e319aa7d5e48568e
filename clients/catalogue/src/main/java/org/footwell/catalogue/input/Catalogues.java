package org.footwell.catalogue.input;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.HashSet;
import java.util.Set;
import org.footwell.catalogue.row.CannotRun;
import org.footwell.client.model.DriverCheckRequest;

/** Opens catalogues. */
public final class Catalogues {

  private final ObjectMapper mapper;
  private final Fields fields;
  private final Mapping mapping;

  /**
   * Prepares reading.
   *
   * @throws CannotRun if the mapping names a field that the contract does not have
   */
  public Catalogues(ObjectMapper mapper, Mapping mapping) throws CannotRun {
    this.mapper = mapper;
    this.fields = new Fields(mapper, DriverCheckRequest.class);
    this.mapping = mapping;
    requireFields(mapping.renamed().keySet());
    requireFields(mapping.constants().keySet());
    requireOneUse();
  }

  private void requireFields(Set<String> names) throws CannotRun {
    for (String name : names) {
      if (!fields.has(name)) {
        throw new CannotRun(name + " is no field of driver-check; it has " + fields.names() + ".");
      }
    }
  }

  /** A column that is left out or becomes a second field would be lost without a word. */
  private void requireOneUse() throws CannotRun {
    Set<String> used = new HashSet<>(mapping.ignored());
    for (String column : mapping.renamed().values()) {
      if (!used.add(column)) {
        throw new CannotRun("Column " + column + " has more than one use: give one field.");
      }
    }
  }

  public Catalogue csv(Source source, CsvManner manner) throws IOException, CannotRun {
    return new CsvCatalogue(source.stream(), manner, mapping, mapper, fields);
  }

  public Catalogue lines(Source source) {
    return new LinesCatalogue(source.stream(), mapping, mapper, fields);
  }
}
