/** Levels of the channels against a wanted curve and against one another, from recordings. */
package org.footwell.measured.balance;
