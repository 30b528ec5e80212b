/** From metres to pixels and back, and what is where. Knows no widgets. */
package org.cairnfield.ui.plan.internal.geometry;
