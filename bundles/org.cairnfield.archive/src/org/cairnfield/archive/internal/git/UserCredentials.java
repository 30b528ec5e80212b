package org.cairnfield.archive.internal.git;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.eclipse.jgit.transport.CredentialItem;
import org.eclipse.jgit.transport.CredentialsProvider;
import org.eclipse.jgit.transport.NetRCCredentialsProvider;
import org.eclipse.jgit.transport.URIish;

/**
 * Name and password for a host, as the user has them: {@code CAIRNFIELD_USER} and {@code CAIRNFIELD_PASSWORD}, otherwise what
 * Git's credential helper knows, otherwise ~/.netrc. Nobody is asked, and nothing of it is kept or shown.
 */
final class UserCredentials extends CredentialsProvider {

	private final UserGit user;
	private final NetRCCredentialsProvider netrc = new NetRCCredentialsProvider();
	private boolean refused;

	UserCredentials(UserGit user) {
		this.user = user;
	}

	@Override
	public boolean isInteractive() {
		return false;
	}

	@Override
	public boolean supports(CredentialItem... items) {
		return List.of(items).stream()
				.allMatch(item -> item instanceof CredentialItem.Username || item instanceof CredentialItem.Password);
	}

	@Override
	public boolean get(URIish uri, CredentialItem... items) {
		if (refused || !supports(items)) {
			return false;
		}
		refused = true; // asked again, they were wrong
		String name = System.getenv("CAIRNFIELD_USER");
		String password = System.getenv("CAIRNFIELD_PASSWORD");
		if (name == null || password == null) {
			Map<String, String> known = ofHelper(uri);
			name = known.get("username");
			password = known.get("password");
		}
		if (name == null || password == null) {
			return netrc.get(uri, items);
		}
		for (CredentialItem item : items) {
			if (item instanceof CredentialItem.Username username) {
				username.setValue(name);
			} else if (item instanceof CredentialItem.Password secret) {
				secret.setValue(password.toCharArray());
			}
		}
		return true;
	}

	/** So that it asks nobody, and reads the configuration that is read here. */
	private static Map<String, String> environment() {
		Map<String, String> set = new HashMap<>(
				Map.of("GIT_TERMINAL_PROMPT", "0", "GIT_ASKPASS", "", "SSH_ASKPASS", ""));
		String config = System.getProperty(UserGit.PROPERTY);
		if (config != null) {
			set.put("GIT_CONFIG_GLOBAL", config);
		}
		return set;
	}

	/** What {@code git credential fill} answers, where there is a Git; empty where it knows nothing. */
	private Map<String, String> ofHelper(URIish uri) {
		Map<String, String> known = new HashMap<>();
		try (Program program = new Program()) {
			Path git = user.git();
			if (git == null) {
				return known;
			}
			String asked = "protocol=" + uri.getScheme() + "\nhost=" + uri.getHost()
					+ (uri.getPort() > 0 ? ":" + uri.getPort() : "") + '\n'
					+ (uri.getUser() == null ? "" : "username=" + uri.getUser() + '\n') + '\n';
			Program.Done done = program.run(List.of(git.toString(), "-c", "core.askPass=", "credential", "fill"),
					asked.getBytes(StandardCharsets.UTF_8), environment());
			if (done.exit() == 0) {
				done.text().lines().filter(line -> line.indexOf('=') > 0)
						.forEach(line -> known.put(line.substring(0, line.indexOf('=')),
								line.substring(line.indexOf('=') + 1)));
			}
		} catch (IOException e) {
			// then it knows nothing
		}
		return known;
	}
}
