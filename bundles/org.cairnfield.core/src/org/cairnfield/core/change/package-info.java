/** What has changed at a site between two surveys: which access points are gone, new or replaced. */
package org.cairnfield.core.change;
