/** The readers of what callers send, given what nobody would think of. */
package org.footwell.fuzz;
