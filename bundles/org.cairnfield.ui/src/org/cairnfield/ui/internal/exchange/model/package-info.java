/** What an exchange has brought, or would bring, in words. */
package org.cairnfield.ui.internal.exchange.model;
