package org.footwell.vehicle.repair;

import java.math.BigDecimal;
import java.util.List;
import java.util.function.UnaryOperator;
import org.footwell.parts.plan.VehiclePlan;

/**
 * One change of a plan.
 *
 * @param thing what it changes: of two changes of one thing only one can be made
 * @param places JSON Pointers to what is changed
 * @param was what stood there, as text; null where nothing did
 * @param becomes what stands there then; null where nothing does
 * @param price of what is new, or null where it is not known or nothing is bought
 * @param made a plan with it
 */
record Change(
    RepairKind kind,
    String thing,
    List<String> places,
    String was,
    String becomes,
    BigDecimal price,
    UnaryOperator<VehiclePlan> made) {}
