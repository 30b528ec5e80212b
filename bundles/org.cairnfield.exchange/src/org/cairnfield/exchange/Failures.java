package org.cairnfield.exchange;

import java.io.EOFException;
import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.zip.ZipException;

/** What went wrong with a file, in words. */
final class Failures {

	/** Found while reading, for reasons of ours rather than the file system's. */
	static final class Refused extends IOException {
		private static final long serialVersionUID = 1;
		final String remedy;

		Refused(String what, String remedy) {
			super(what);
			this.remedy = remedy;
		}
	}

	private Failures() {
	}

	/** A quotation mark without its partner. */
	static Refused unclosed() {
		return new Refused("a quotation mark that opens here is never closed",
				"Close it, or double it where it belongs to the text");
	}

	static IntakeException of(Path file, long line, IOException e) {
		String what;
		String remedy;
		if (e instanceof Refused refused) {
			what = refused.getMessage();
			remedy = refused.remedy;
		} else if (e instanceof NoSuchFileException) {
			what = "there is no such file";
			remedy = "Check the name and the folder";
		} else if (e instanceof AccessDeniedException) {
			what = "the file may not be read";
			remedy = "Ask for the right to read it";
		} else if (e instanceof EOFException) {
			what = "the compressed file ends too early";
			remedy = "Fetch it again: it was cut off on its way";
		} else if (e instanceof ZipException) {
			what = "the compressed file is damaged (" + e.getMessage() + ")";
			remedy = "Fetch it again";
		} else if (e instanceof CharacterCodingException) {
			what = "there are bytes that are no characters of the character set";
			remedy = "Name the character set that the file was written in";
		} else if (e.getMessage() != null && e.getMessage().contains("encapsulated token")) {
			what = unclosed().getMessage();
			remedy = unclosed().remedy;
		} else {
			what = "reading failed (" + e.getMessage() + ")";
			remedy = "Check the disk and try again";
		}
		return new IntakeException(file, line, what, remedy, e);
	}

	static IntakeException writing(Path file, IOException e) {
		String why = e instanceof AccessDeniedException ? "the folder may not be written to"
				: e instanceof NoSuchFileException ? "there is no such folder"
						: e instanceof FileSystemException f && f.getReason() != null ? f.getReason() : e.getMessage();
		return new IntakeException(file, 0, "the file could not be written: " + why, "Name another folder", e);
	}
}
