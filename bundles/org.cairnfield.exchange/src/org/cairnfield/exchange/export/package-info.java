/** Radio maps written for other programs: tables, GeoJSON, GeoPackage; what may leave, and how it is checked afterwards. */
package org.cairnfield.exchange.export;
