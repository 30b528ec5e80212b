package org.cairnfield.exchange;

import java.io.EOFException;
import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.zip.ZipException;

import org.cairnfield.core.text.Words;

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
		return new Refused(Messages.Failures_aQuotationMarkThatOpens,
				Messages.Failures_closeItOrDoubleIt);
	}

	static IntakeException of(Path file, long line, IOException e) {
		String what;
		String remedy;
		if (e instanceof Refused refused) {
			what = refused.getMessage();
			remedy = refused.remedy;
		} else if (e instanceof NoSuchFileException) {
			what = Messages.Failures_thereIsNoSuchFile;
			remedy = Messages.Failures_checkTheNameAndThe;
		} else if (e instanceof AccessDeniedException) {
			what = Messages.Failures_theFileMayNotBe;
			remedy = Messages.Failures_askForTheRightTo;
		} else if (e instanceof EOFException) {
			what = Messages.Failures_theCompressedFileEndsToo;
			remedy = Messages.Failures_fetchItAgainItWas;
		} else if (e instanceof ZipException) {
			what = Words.bind(Messages.Failures_theCompressedFileIsDamaged, e.getMessage());
			remedy = Messages.Failures_fetchItAgain;
		} else if (e instanceof CharacterCodingException) {
			what = Messages.Failures_thereAreBytesThatAre;
			remedy = Messages.Failures_nameTheCharacterSetThat;
		} else if (e.getMessage() != null && e.getMessage().contains("encapsulated token")) {
			what = unclosed().getMessage();
			remedy = unclosed().remedy;
		} else {
			what = Words.bind(Messages.Failures_readingFailed, e.getMessage());
			remedy = Messages.Failures_checkTheDiskAndTry;
		}
		return new IntakeException(file, line, what, remedy, e);
	}

	static IntakeException writing(Path file, IOException e) {
		String why = e instanceof AccessDeniedException ? Messages.Failures_theFolderMayNotBe
				: e instanceof NoSuchFileException ? Messages.Failures_thereIsNoSuchFolder
						: e instanceof FileSystemException f && f.getReason() != null ? f.getReason() : e.getMessage();
		return new IntakeException(file, 0, Words.bind(Messages.Failures_theFileCouldNotBe, why),
				Messages.Failures_nameAnotherFolder, e);
	}
}
