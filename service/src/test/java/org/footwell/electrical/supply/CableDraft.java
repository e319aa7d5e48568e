package org.footwell.electrical.supply;

import java.util.List;
import org.footwell.electrical.supply.SupplyCableRequest.Branch;
import org.footwell.parts.CableBuilder;
import org.footwell.parts.ConductorMaterial;
import org.footwell.parts.ReturnPath;

/** A request to be changed: the main cable, and what loads it. */
final class CableDraft {

  final CableBuilder cable = CableBuilder.builder();
  final SupplyCableRequestBuilder use = SupplyCableRequestBuilder.builder();

  CableDraft supplyV(double volt) {
    use.supplyV(volt);
    return this;
  }

  CableDraft currentA(Double ampere) {
    use.currentA(ampere);
    return this;
  }

  CableDraft branches(List<Branch> branches) {
    use.branches(branches);
    return this;
  }

  CableDraft returnPath(ReturnPath path) {
    use.returnPath(path);
    return this;
  }

  CableDraft bodyOhm(double ohm) {
    use.bodyOhm(ohm);
    return this;
  }

  CableDraft contactsOhm(double ohm) {
    use.contactsOhm(ohm);
    return this;
  }

  CableDraft permittedDropV(double volt) {
    use.permittedDropV(volt);
    return this;
  }

  CableDraft fuseDistanceM(double metre) {
    use.fuseDistanceM(metre);
    return this;
  }

  CableDraft fuseHeatFactor(double factor) {
    use.fuseHeatFactor(factor);
    return this;
  }

  /** What the amplifier at its end draws at the loudest, and its own fuses. */
  CableDraft loudest(Double fullSineA, boolean sustained, Double ownA) {
    use.fullSineA(fullSineA).sustainedBass(sustained);
    use.amplifierFuseA(ownA);
    return this;
  }

  CableDraft oneWayM(double metre) {
    cable.oneWayM(metre);
    return this;
  }

  CableDraft areaMm2(Double area) {
    cable.areaMm2(area);
    return this;
  }

  CableDraft material(ConductorMaterial material) {
    cable.material(material);
    return this;
  }

  CableDraft conductivity(double ratio) {
    cable.conductivity(ratio);
    return this;
  }

  CableDraft conductorTemperatureC(double celsius) {
    cable.conductorTemperatureC(celsius);
    return this;
  }

  CableDraft insulationTemperatureC(double celsius) {
    cable.insulationTemperatureC(celsius);
    return this;
  }

  CableDraft engineSpace(boolean inside) {
    cable.engineSpace(inside);
    return this;
  }

  SupplyCableRequest build() {
    return use.cable(cable.build()).build();
  }
}
