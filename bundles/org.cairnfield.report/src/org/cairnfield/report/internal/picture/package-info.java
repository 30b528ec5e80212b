/** The pictures of reports, as SVG text: drawn without a display, the same text for the same numbers. */
package org.cairnfield.report.internal.picture;
