/** What is done to archives to see whether they bear it: by the tests a little, by {@code tests/torture} a lot. */
package org.cairnfield.archive.torture;
