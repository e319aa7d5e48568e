/** Who may call and how much: keys, counted calls, and the addresses behind proxies. */
package org.footwell.web.limits;
