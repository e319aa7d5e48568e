package org.footwell.fuzz;

import java.util.Locale;
import java.util.function.Supplier;
import org.footwell.web.batch.CsvTarget;
import org.footwell.web.upload.UploadTarget;

/** Every reader of what callers send. */
public enum FuzzedReader {
  NETWORK(NetworkTarget::new),
  CSV(CsvTarget::new),
  JSON(JsonTarget::new),
  WAV(WavTarget::new),
  UPLOAD(UploadTarget::new),
  PLAN(PlanTarget::new),
  PATHS(PathsTarget::new);

  private final Supplier<Target> target;

  FuzzedReader(Supplier<Target> target) {
    this.target = target;
  }

  Target target() {
    return target.get();
  }

  /** As its folders are called. */
  String id() {
    return name().toLowerCase(Locale.ROOT);
  }
}
