package org.footwell.electrical.supply;

import static org.footwell.electrical.supply.CableFinding.BEYOND_AMPACITY_TABLE;
import static org.footwell.electrical.supply.CableFinding.CABLE_OVERLOADED;
import static org.footwell.electrical.supply.CableFinding.DROP_EXCEEDED;
import static org.footwell.electrical.supply.CableFinding.NO_FUSE_FITS;
import static org.footwell.electrical.supply.CableFinding.NO_GAUGE_FITS;
import static org.footwell.electrical.supply.CableFinding.NO_OPERATING_POINT;
import static org.footwell.electrical.supply.CableFinding.NO_SIZE_FITS;

import java.util.List;
import java.util.stream.DoubleStream;
import org.footwell.calculation.Run;
import org.footwell.calculation.text.WireGauge;
import org.footwell.electrical.supply.SupplyCableResult.LimitedBy;
import org.footwell.electrical.supply.SupplyCableResult.SizedCable;
import org.footwell.physics.Conductors;
import org.footwell.physics.ConstantPower;

/** Finds the smallest size for a leg, or says why there is none. */
final class Sizing {

  /** A size that can be bought. */
  private record Size(double areaMm2, String awg) {}

  private static final List<Size> METRIC =
      Conductors.sizesMm2()
          .filter(area -> area >= Ampacity.SMALLEST_MM2)
          .mapToObj(area -> new Size(area, null))
          .toList();
  private static final List<Size> GAUGES =
      Gauge.sizes()
          .mapToObj(gauge -> new Size(Gauge.areaMm2(gauge), WireGauge.name(gauge)))
          .filter(size -> size.areaMm2() >= Ampacity.SMALLEST_MM2)
          .toList();

  private Sizing() {}

  /** Both series; null where none does. */
  record Found(SizedCable metric, SizedCable gauge) {

    /** One of them, for what holds of both; null where neither does. */
    SizedCable either() {
      return metric == null ? gauge : metric;
    }
  }

  /** The metric sizes that may be installed, mm², smallest first. */
  static DoubleStream metricSizes() {
    return METRIC.stream().mapToDouble(Size::areaMm2);
  }

  static Found smallest(Leg leg, Run run) {
    SizedCable metric = smallest(METRIC, leg, run);
    SizedCable gauge = smallest(GAUGES, leg, run);
    if (metric == null && gauge == null) {
      double largest = METRIC.get(METRIC.size() - 1).areaMm2();
      run.find(NO_SIZE_FITS).at(leg.pointer()).limit(largest);
      judge(leg, largest, run);
    } else if (gauge == null) {
      run.find(NO_GAUGE_FITS).at(leg.pointer()).limit(Ampacity.LARGEST_MM2);
    }
    if (metric != null && metric.areaMm2() > Ampacity.LARGEST_MM2) {
      run.find(BEYOND_AMPACITY_TABLE)
          .at(leg.pointer())
          .value(metric.areaMm2())
          .limit(Ampacity.LARGEST_MM2);
    }
    return new Found(metric, gauge);
  }

  private static SizedCable smallest(List<Size> sizes, Leg leg, Run run) {
    LimitedBy tooSmall = null;
    for (Size size : sizes) {
      LimitedBy limit = leg.limit(size.areaMm2());
      if (limit == null) {
        return leg.sized(size.areaMm2(), size.awg(), tooSmall, run);
      }
      tooSmall = limit;
    }
    return null;
  }

  /** Says everything that is wrong with a size. */
  static void judge(Leg leg, double areaMm2, Run run) {
    double loop = leg.loopOhm(areaMm2);
    if (Double.isNaN(leg.current(loop))) {
      run.find(NO_OPERATING_POINT)
          .at(leg.pointer())
          .value(leg.inputW())
          .limit(run.apply(ConstantPower.LARGEST, leg.startV(), loop))
          .with("size", areaMm2)
          .with("loop", loop)
          .with("supply", leg.startV());
      return;
    }
    SizedCable cable = leg.sized(areaMm2, null, null, run);
    LimitedBy limit = leg.limit(areaMm2);
    if (limit == LimitedBy.AMPACITY) {
      run.find(CABLE_OVERLOADED)
          .at(leg.pointer())
          .value(cable.currentA())
          .limit(cable.ampacityA())
          .with("size", areaMm2);
    }
    if (cable.fuseA() == null) {
      run.find(NO_FUSE_FITS)
          .at(leg.pointer())
          .value(leg.leastFuse(cable.currentA()))
          .limit(cable.ampacityA())
          .with("current", cable.currentA())
          .with("size", areaMm2);
    }
    if (leg.dropsTooMuch(loop)) {
      run.find(DROP_EXCEEDED)
          .at(leg.pointer())
          .value(cable.dropV())
          .limit(leg.permittedDropV())
          .with("size", areaMm2);
    }
  }
}
