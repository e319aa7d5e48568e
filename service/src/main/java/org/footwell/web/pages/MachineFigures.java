package org.footwell.web.pages;

import io.micrometer.core.instrument.Gauge;
import io.micrometer.core.instrument.MeterRegistry;
import io.micrometer.core.instrument.binder.jvm.JvmGcMetrics;
import io.micrometer.core.instrument.binder.jvm.JvmHeapPressureMetrics;
import io.micrometer.core.instrument.binder.jvm.JvmInfoMetrics;
import io.micrometer.core.instrument.binder.jvm.JvmMemoryMetrics;
import io.micrometer.core.instrument.binder.jvm.JvmThreadMetrics;
import io.micrometer.core.instrument.binder.system.FileDescriptorMetrics;
import io.micrometer.core.instrument.binder.system.ProcessorMetrics;
import io.micrometer.core.instrument.binder.system.UptimeMetrics;
import java.util.List;

/** What runs and on what: version, memory, collections of garbage, threads, processor, files. */
final class MachineFigures implements AutoCloseable {

  private final JvmGcMetrics collections = new JvmGcMetrics();
  private final JvmHeapPressureMetrics pressure = new JvmHeapPressureMetrics();

  MachineFigures(String version, MeterRegistry registry) {
    Gauge.builder("footwell.build.info", () -> 1)
        .description("The version that runs")
        .tag("version", version)
        .register(registry);
    List.of(
            collections,
            pressure,
            new JvmInfoMetrics(),
            new JvmMemoryMetrics(),
            new JvmThreadMetrics(),
            new ProcessorMetrics(),
            new UptimeMetrics(),
            new FileDescriptorMetrics())
        .forEach(figures -> figures.bindTo(registry));
  }

  @Override
  public void close() {
    collections.close();
    pressure.close();
  }
}
