/**
 * The error budget of any calculation: what its answers are worth when its inputs are known within
 * tolerances only, and which input to know better first.
 */
package org.footwell.analysis.tolerance;
