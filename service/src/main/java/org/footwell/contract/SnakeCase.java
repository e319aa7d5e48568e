package org.footwell.contract;

import com.fasterxml.jackson.databind.PropertyNamingStrategies;
import org.footwell.calculation.text.Names;

/** Names of components become JSON names by the one rule of the house. */
final class SnakeCase extends PropertyNamingStrategies.NamingBase {

  private static final long serialVersionUID = 1L;

  @Override
  public String translate(String camel) {
    return Names.snake(camel);
  }
}
