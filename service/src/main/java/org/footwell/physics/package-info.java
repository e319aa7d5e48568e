/** Laws and conversions that several topics stand on; each formula with its source. */
package org.footwell.physics;
