/** Rules about the devices that recorded surveys. */
package org.cairnfield.curation.internal.rules.device;
