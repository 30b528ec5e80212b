/**
 * Floor plans of other programs: IMDF archives (OGC 20-094) and GeoJSON (RFC 7946) read as levels with what is drawn on them, brought
 * into the metres of a site, and drawn as SVG.
 */
package org.cairnfield.exchange.floors;
