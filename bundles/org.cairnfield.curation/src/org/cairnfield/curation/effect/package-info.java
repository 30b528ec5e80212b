/** What a change of the map does to positions, computed on hold-outs before the change is made. */
package org.cairnfield.curation.effect;
