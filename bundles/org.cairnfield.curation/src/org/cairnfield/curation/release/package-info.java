/** Releases: what may be released (gates), what was (manifests, tags), whether it still is what it was, and how it leaves. */
package org.cairnfield.curation.release;
