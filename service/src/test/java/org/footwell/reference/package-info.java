/** Checks of calculations against something outside the project, and the report of them. */
package org.footwell.reference;
