/** What a shop offers, as its catalogue has it: parts of a plan with their price, mass and size. */
package org.footwell.parts.offer;
