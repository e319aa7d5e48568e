/** Networks of coils, amplifiers, gains, impedance, passive filters and the supply. */
package org.footwell.electrical;
