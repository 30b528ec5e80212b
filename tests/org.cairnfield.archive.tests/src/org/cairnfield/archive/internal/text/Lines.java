package org.cairnfield.archive.internal.text;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.function.Consumer;
import java.util.zip.CRC32C;

/** Lines and files for tests. */
final class Lines {

	private Lines() {
	}

	/** What a writer makes of one line. */
	static String written(Consumer<LineWriter> fields) throws IOException {
		ByteArrayOutputStream out = new ByteArrayOutputStream();
		LineWriter line = new LineWriter(out, FileKind.SAMPLES);
		fields.accept(line);
		line.end();
		line.seal();
		return out.toString(StandardCharsets.UTF_8).split("\n")[1];
	}

	/** A file with a seal that matches, put together here from the description of the format. */
	static byte[] sealed(int records, String... lines) {
		String body = String.join("\n", lines) + "\n";
		CRC32C crc = new CRC32C();
		crc.update(body.getBytes(StandardCharsets.UTF_8));
		return (body + "end\t" + records + '\t' + String.format("%08x", crc.getValue()) + '\n')
				.getBytes(StandardCharsets.UTF_8);
	}

	static byte[] ascii(String text) {
		return text.getBytes(StandardCharsets.UTF_8);
	}
}
