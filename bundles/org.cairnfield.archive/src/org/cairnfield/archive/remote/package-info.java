/** Where people meet who work on one archive. */
package org.cairnfield.archive.remote;
