/**
 * Whole packages of parts for a vehicle: what is offered, screened by the model of the vehicle and searched
 * by bounds, and what is listed reviewed in full.
 */
package org.footwell.vehicle.packages;
