/** The contract as callers meet it: what it promised, and the page that shows it. */
package org.footwell.openapi;
