package org.cairnfield.archive.internal.disk;

import java.io.IOException;
import java.io.OutputStream;

/** What a file is to hold, written when asked. */
@FunctionalInterface
public interface Content {

	void writeTo(OutputStream out) throws IOException;
}
