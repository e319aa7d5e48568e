/** The data sheet of a driver: what follows from what, and whether it agrees with itself. */
package org.footwell.acoustic.driver;
