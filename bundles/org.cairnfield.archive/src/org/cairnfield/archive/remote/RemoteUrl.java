package org.cairnfield.archive.remote;

import java.net.URI;
import java.net.URISyntaxException;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.cairnfield.archive.fault.ArchiveException;
import org.cairnfield.core.text.Words;

/**
 * Where people meet to exchange an archive: a bare repository of Git in a folder, or reached by ssh or http(s).
 *
 * @param text in the form that Git has it; never with a password
 */
public record RemoteUrl(String text) {

	/** user@host:path, which is short for ssh. */
	private static final Pattern SHORT_SSH = Pattern
			.compile("(?:[A-Za-z0-9._-]+@)?[A-Za-z0-9][A-Za-z0-9.-]+:(?!//)[^:\\\\-].*");
	private static final Pattern SCHEME = Pattern.compile("([A-Za-z][A-Za-z0-9+.-]+)://.*");
	private static final Set<String> SCHEMES = Set.of("file", "ssh", "http", "https");
	private static final String REMEDY = Messages.RemoteUrl_nameAFolderOrUrl;

	/**
	 * What a person entered; a folder is made absolute.
	 *
	 * @throws ArchiveException for what leads nowhere that can be trusted with it
	 */
	public static RemoteUrl parse(String entered) throws ArchiveException {
		String text = entered.strip();
		if (text.isEmpty() || text.startsWith("-") || text.chars().anyMatch(Character::isISOControl)
				|| text.contains("::")) {
			throw new ArchiveException(Words.bind(Messages.RemoteUrl_notAPlaceToExchange, text), REMEDY);
		}
		Matcher scheme = SCHEME.matcher(text);
		if (scheme.matches()) {
			return ofUrl(text, scheme.group(1).toLowerCase(Locale.ROOT));
		}
		if (SHORT_SSH.matcher(text).matches()) {
			return new RemoteUrl(text);
		}
		try {
			return new RemoteUrl(Path.of(text).toAbsolutePath().normalize().toString());
		} catch (InvalidPathException e) {
			throw new ArchiveException(Words.bind(Messages.RemoteUrl_notAPlaceToExchange, text), REMEDY, e);
		}
	}

	private static RemoteUrl ofUrl(String text, String scheme) throws ArchiveException {
		if (!SCHEMES.contains(scheme)) {
			throw new ArchiveException(Words.bind(Messages.RemoteUrl_isNotSupported, scheme, text), REMEDY);
		}
		try {
			URI uri = new URI(text);
			String user = uri.getRawUserInfo();
			if (user != null && user.indexOf(':') >= 0) {
				throw new ArchiveException(Messages.RemoteUrl_theUrlHoldsAPassword,
						Messages.RemoteUrl_leaveItOutItIs);
			}
			if (!scheme.equals("file") && (uri.getHost() == null || uri.getHost().startsWith("-")
					|| user != null && user.startsWith("-"))) {
				throw new ArchiveException(Words.bind(Messages.RemoteUrl_noHostIn, text), REMEDY);
			}
		} catch (URISyntaxException e) {
			throw new ArchiveException(Words.bind(Messages.RemoteUrl_notAUrl, text, e.getReason()), REMEDY, e);
		}
		return new RemoteUrl(text);
	}

	/** The folder that it is; null where it is reached over a network. */
	public Path folder() {
		if (text.startsWith("file://")) {
			try {
				return Path.of(URI.create(text));
			} catch (IllegalArgumentException e) {
				return null;
			}
		}
		return SCHEME.matcher(text).matches() || SHORT_SSH.matcher(text).matches() ? null : Path.of(text);
	}

	@Override
	public String toString() {
		return text;
	}
}
