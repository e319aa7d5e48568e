package org.footwell.calculation;

import io.avaje.validation.adapter.AbstractConstraintAdapter;
import io.avaje.validation.adapter.ValidationAdapter;
import io.avaje.validation.adapter.ValidationContext.AdapterCreateRequest;
import java.math.BigDecimal;

/**
 * An inclusive bound on a number; a double is compared as a double. The validator's own way makes a
 * BigDecimal of every value, which costs more than most calculations do.
 */
final class Bound extends AbstractConstraintAdapter<Object> {

  private final BigDecimal exact;
  private final double rounded;
  private final boolean lowest;

  private Bound(AdapterCreateRequest request, boolean lowest) {
    super(request);
    this.exact = new BigDecimal(request.<String>attribute("value"));
    this.rounded = exact.doubleValue();
    this.lowest = lowest;
  }

  /** The check of an inclusive decimal bound, or null for any other annotation. */
  static ValidationAdapter<?> of(AdapterCreateRequest request) {
    String annotation = request.annotationType().getSimpleName();
    boolean lowest = annotation.equals("DecimalMin");
    boolean known = lowest || annotation.equals("DecimalMax");
    boolean inclusive = !Boolean.FALSE.equals(request.attributes().get("inclusive"));
    return known && inclusive ? new Bound(request, lowest) : null;
  }

  /** Nothing is asked of a value that is not there; not-a-number lies within no bound. */
  @Override
  protected boolean isValid(Object value) {
    if (value instanceof Double number) {
      return lowest ? number >= rounded : number <= rounded;
    }
    return value == null || withinExactly(new BigDecimal(value.toString()));
  }

  private boolean withinExactly(BigDecimal value) {
    return lowest ? value.compareTo(exact) >= 0 : value.compareTo(exact) <= 0;
  }
}
