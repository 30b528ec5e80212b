package org.cairnfield.archive;

import java.io.IOException;
import java.net.InetAddress;
import java.nio.file.Path;
import java.util.List;

import org.apache.sshd.common.config.keys.AuthorizedKeyEntry;
import org.apache.sshd.common.config.keys.KeyUtils;
import org.apache.sshd.server.SshServer;
import org.apache.sshd.server.command.AbstractCommandSupport;
import org.apache.sshd.server.keyprovider.SimpleGeneratorHostKeyProvider;
import org.eclipse.jgit.lib.Repository;
import org.eclipse.jgit.storage.file.FileRepositoryBuilder;
import org.eclipse.jgit.transport.ReceivePack;
import org.eclipse.jgit.transport.UploadPack;

/** A bare repository on a host that is reached by ssh, by those whose key it knows. */
final class SshMeeting implements AutoCloseable {

	private final SshServer server = SshServer.setUpDefaultServer();

	/** @param publicKey file of the one key that it lets in */
	SshMeeting(Path bare, Path publicKey, Path hostKey) throws IOException {
		server.setHost(InetAddress.getLoopbackAddress().getHostAddress());
		SimpleGeneratorHostKeyProvider keys = new SimpleGeneratorHostKeyProvider(hostKey);
		keys.setAlgorithm(KeyUtils.EC_ALGORITHM);
		keys.setKeySize(256);
		server.setKeyPairProvider(keys);
		List<AuthorizedKeyEntry> known = AuthorizedKeyEntry.readAuthorizedKeys(publicKey);
		server.setPublickeyAuthenticator((user, key, session) -> {
			try {
				return known.stream().anyMatch(entry -> isSame(entry, key));
			} catch (IllegalStateException e) {
				return false;
			}
		});
		server.setCommandFactory((channel, command) -> new AbstractCommandSupport(command, null) {
			@Override
			public void run() {
				int code = 0;
				try (Repository repository = new FileRepositoryBuilder().setGitDir(bare.toFile()).build()) {
					if (getCommand().startsWith("git-upload-pack ")) {
						try (UploadPack pack = new UploadPack(repository)) {
							pack.upload(getInputStream(), getOutputStream(), getErrorStream());
						}
					} else {
						new ReceivePack(repository).receive(getInputStream(), getOutputStream(), getErrorStream());
					}
				} catch (IOException e) {
					code = 1;
				}
				onExit(code);
			}
		});
		server.start();
	}

	private static boolean isSame(AuthorizedKeyEntry entry, java.security.PublicKey key) {
		try {
			return KeyUtils.compareKeys(entry.resolvePublicKey(null, null), key);
		} catch (IOException | java.security.GeneralSecurityException e) {
			throw new IllegalStateException(e);
		}
	}

	String url() {
		return "ssh://mq@" + server.getHost() + ':' + server.getPort() + "/quay.git";
	}

	int port() {
		return server.getPort();
	}

	@Override
	public void close() throws IOException {
		server.stop(true);
	}
}
