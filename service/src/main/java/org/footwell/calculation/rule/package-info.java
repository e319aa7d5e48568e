/** Rules between the fields of a record, declared as annotations beside it. */
package org.footwell.calculation.rule;
