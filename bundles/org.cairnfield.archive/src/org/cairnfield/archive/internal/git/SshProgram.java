package org.cairnfield.archive.internal.git;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;

import org.cairnfield.archive.fault.ArchiveException;
import org.eclipse.jgit.errors.TransportException;
import org.eclipse.jgit.transport.CredentialsProvider;
import org.eclipse.jgit.transport.RemoteSession;
import org.eclipse.jgit.transport.SshSessionFactory;
import org.eclipse.jgit.transport.URIish;
import org.eclipse.jgit.util.FS;

/** Reaches a host by the ssh program of the user, as Git does: with the user's keys, agent, configuration and known hosts. */
final class SshProgram extends SshSessionFactory {

	private final UserGit user;

	SshProgram(UserGit user) {
		this.user = user;
	}

	@Override
	public RemoteSession getSession(URIish uri, CredentialsProvider credentials, FS fs, int timeoutMillis)
			throws TransportException {
		List<String> command = new ArrayList<>();
		try {
			command.addAll(user.ssh());
		} catch (ArchiveException e) {
			throw new TransportException(uri, e.getMessage(), e);
		}
		command.addAll(List.of("-o", "ConnectTimeout=" + Math.max(1, timeoutMillis / 1000)));
		if (System.console() == null) {
			command.addAll(List.of("-o", "BatchMode=yes")); // nobody could answer what it asks
		}
		if (uri.getPort() > 0) {
			command.addAll(List.of("-p", Integer.toString(uri.getPort())));
		}
		command.add("--");
		command.add(uri.getUser() == null ? uri.getHost() : uri.getUser() + '@' + uri.getHost());
		return new Session(command);
	}

	@Override
	public String getType() {
		return Messages.SshProgram_sshOfTheUser;
	}

	/** One run of the program for each command on the host. */
	private static final class Session implements RemoteSession {

		private final List<String> command;
		private final List<Process> processes = new ArrayList<>();

		Session(List<String> command) {
			this.command = command;
		}

		@Override
		public Process exec(String commandName, int timeoutSeconds) throws IOException {
			List<String> whole = new ArrayList<>(command);
			whole.add(commandName);
			Process process = new ProcessBuilder(whole)
					.directory(Path.of(System.getProperty("java.io.tmpdir")).toFile()).start();
			processes.add(process);
			return new Ending(process);
		}

		@Override
		public void disconnect() {
			processes.forEach(Process::destroy);
		}
	}

	/**
	 * A process whose exit code can be asked for as soon as it has closed its output: JGit does, and a busy machine takes a
	 * moment longer to end it.
	 */
	private static final class Ending extends Process {

		private static final int SECONDS = 10;

		private final Process process;

		Ending(Process process) {
			this.process = process;
		}

		@Override
		public int exitValue() {
			try {
				process.waitFor(SECONDS, TimeUnit.SECONDS);
			} catch (InterruptedException e) {
				Thread.currentThread().interrupt();
			}
			return process.exitValue();
		}

		@Override
		public OutputStream getOutputStream() {
			return process.getOutputStream();
		}

		@Override
		public InputStream getInputStream() {
			return process.getInputStream();
		}

		@Override
		public InputStream getErrorStream() {
			return process.getErrorStream();
		}

		@Override
		public int waitFor() throws InterruptedException {
			return process.waitFor();
		}

		@Override
		public boolean isAlive() {
			return process.isAlive();
		}

		@Override
		public void destroy() {
			process.destroy();
		}
	}
}
