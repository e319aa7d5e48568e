/** Requests made as large as the contract lets them be, from the examples of the cards. */
package org.footwell.growth;
