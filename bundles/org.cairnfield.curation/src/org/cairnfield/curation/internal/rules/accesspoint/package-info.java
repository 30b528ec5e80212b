/** Rules about access points: addresses, how often heard, those that travel, move, come and go, or share a radio. */
package org.cairnfield.curation.internal.rules.accesspoint;
