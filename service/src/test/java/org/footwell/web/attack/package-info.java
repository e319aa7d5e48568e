/** Everything that the contract offers, asked as nobody should: from a seed, so that it can be asked again. */
package org.footwell.web.attack;
