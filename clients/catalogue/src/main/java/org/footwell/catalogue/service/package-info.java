/** Has chunks of rows checked by the service, over the client generated from the contract. */
package org.footwell.catalogue.service;
