package org.cairnfield.core.choose;

import org.cairnfield.core.match.Search;

/** What is tried together. @param epsilon for the whole map */
record Combination(double epsilon, Search search) {
}
