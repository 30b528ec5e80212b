/** The files of an archive as EMF resources: the structure as XMI, samples, splits and ledgers as lines of text. */
package org.cairnfield.archive.internal.resource;
