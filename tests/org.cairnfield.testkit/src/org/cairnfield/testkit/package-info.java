/** What tests of several bundles share: small maps and archives, and where the open survey sets are. */
package org.cairnfield.testkit;
