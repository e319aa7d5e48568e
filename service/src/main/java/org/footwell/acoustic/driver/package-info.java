/** A driver by its figures: whether its data sheet agrees with itself, how warm its voice coil is. */
package org.footwell.acoustic.driver;
