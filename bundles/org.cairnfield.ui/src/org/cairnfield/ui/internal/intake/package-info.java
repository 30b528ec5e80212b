/** The wizard that takes survey files in. */
package org.cairnfield.ui.internal.intake;
