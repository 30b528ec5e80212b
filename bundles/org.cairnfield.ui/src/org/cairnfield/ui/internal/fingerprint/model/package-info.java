/** Where and how strongly access points are heard. */
package org.cairnfield.ui.internal.fingerprint.model;
