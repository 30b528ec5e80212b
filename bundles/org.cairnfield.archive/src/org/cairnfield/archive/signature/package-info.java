/** What is known of signatures. */
package org.cairnfield.archive.signature;
