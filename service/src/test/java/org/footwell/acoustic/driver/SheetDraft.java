package org.footwell.acoustic.driver;

import java.lang.reflect.Constructor;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import org.footwell.Answers;
import org.footwell.acoustic.driver.sheet.DriverToleranceBuilder;
import org.footwell.calculation.Answer;
import org.footwell.calculation.Names;
import org.footwell.parts.Sensitivity;
import org.footwell.parts.Sensitivity.Basis;

/** A record to be changed, by the names of its fields; starts with a rated impedance only. */
public final class SheetDraft {

  private final Map<String, Object> fields = new LinkedHashMap<>();

  public SheetDraft() {
    fields.put("rated_ohm", 4.0);
  }

  /** An invented 25 cm woofer whose mechanics are 62 g, 0.28 mm/N, 2.1 kg/s; printed as usual. */
  static SheetDraft woofer() {
    return new SheetDraft()
        .with("re_ohm", 3.4)
        .with("fs_hz", 38)
        .with("qms", 7.09)
        .with("qes", 0.56)
        .with("qts", 0.52)
        .with("vas_l", 43.2)
        .with("sd_cm2", 330)
        .with("bl_tm", 9.5)
        .with("mms_g", 62)
        .with("cms_mm_per_n", 0.28)
        .with("rms_kg_per_s", 2.1);
  }

  SheetDraft with(String field, double value) {
    fields.put(field, value);
    return this;
  }

  SheetDraft with(String field, Object value) {
    fields.put(field, value);
    return this;
  }

  SheetDraft without(String... names) {
    fields.keySet().removeAll(Arrays.asList(names));
    return this;
  }

  SheetDraft sensitivity(double level, Basis basis) {
    return with("sensitivity", new Sensitivity(level, basis));
  }

  /** Figures with all their digits, so that nothing is put down to printing. */
  SheetDraft exact() {
    return with("tolerance", DriverToleranceBuilder.builder().printedRounding(false).build());
  }

  DriverCheckRequest request() {
    RecordComponent[] components = DriverCheckRequest.class.getRecordComponents();
    Object[] values = new Object[components.length];
    Map<String, Object> left = new LinkedHashMap<>(fields);
    for (int i = 0; i < components.length; i++) {
      values[i] = left.remove(Names.snake(components[i].getName()));
    }
    if (!left.isEmpty()) {
      throw new IllegalArgumentException("no such fields: " + left.keySet());
    }
    try {
      Constructor<DriverCheckRequest> constructor =
          DriverCheckRequest.class.getDeclaredConstructor(
              Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new));
      return constructor.newInstance(values);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(e);
    }
  }

  Answer<DriverCheckResult> answer() {
    return Answers.of(new DriverCheck(), request());
  }

  DriverCheckResult result() {
    return answer().result();
  }
}
