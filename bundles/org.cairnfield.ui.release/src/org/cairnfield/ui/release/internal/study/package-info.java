/** Ways of splitting side by side, over one archive or several. */
package org.cairnfield.ui.release.internal.study;
