/** Takes back one change while later ones stay. */
package org.cairnfield.archive.internal.merge;
