/** What the factory head unit does to the signal. */
package org.footwell.factory;
