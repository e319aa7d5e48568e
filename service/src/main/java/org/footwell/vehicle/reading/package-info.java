/** Reads a vehicle plan into the model of the whole vehicle; refuses what cannot be read. */
package org.footwell.vehicle.reading;
