package org.footwell.electrical.impedance;

import io.swagger.v3.oas.annotations.media.Schema;

/** A modulus and where it is. */
public record ModulusPoint(
    double frequencyHz, @Schema(description = "Modulus of the impedance, ohm") double modulusOhm) {}
