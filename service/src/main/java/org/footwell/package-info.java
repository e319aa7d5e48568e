/** Where everything is put together: the list of calculations, and main. */
package org.footwell;
