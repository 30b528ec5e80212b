package org.cairnfield.archive.torture;

import java.io.BufferedReader;
import java.io.File;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.CodeSource;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.TimeUnit;

import org.cairnfield.archive.ArchiveStore;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.model.Archive;
import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.xmi.XMLResource;
import org.eclipse.jgit.lib.Repository;

/** A second Java, which can be killed. */
public final class ChildJvm implements AutoCloseable {

	private final Process process;
	private final BufferedReader output;

	private ChildJvm(Process process) {
		this.process = process;
		this.output = new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
	}

	/** Starts a class with the same class path as this one's. */
	public static ChildJvm start(Class<?> main, String... arguments) throws IOException {
		return start(List.of(), main, arguments);
	}

	/** @param options of its Java */
	static ChildJvm start(List<String> options, Class<?> main, String... arguments) throws IOException {
		List<String> command = new ArrayList<>(
				List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString(),
						"-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1", "-Xshare:auto", "-Xmx256m"));
		command.addAll(options);
		command.addAll(List.of("-cp", classPath(main), main.getName()));
		command.addAll(List.of(arguments));
		return new ChildJvm(new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.INHERIT).start());
	}

	/** Where the classes that a child needs come from, also where OSGi has loaded them here. */
	private static String classPath(Class<?> main) {
		Set<String> places = new LinkedHashSet<>();
		try {
			ClassLoader git = Repository.class.getClassLoader();
			for (Class<?> one : List.of(main, ArchiveStore.class, Archive.class, RadioMap.class, URI.class,
					EObject.class,
					XMLResource.class, Repository.class, git.loadClass("com.googlecode.javaewah.EWAHCompressedBitmap"),
					git.loadClass("org.slf4j.Logger"), git.loadClass("org.slf4j.LoggerFactory"),
					git.loadClass("org.apache.commons.codec.digest.DigestUtils"),
					git.loadClass("org.slf4j.LoggerFactory").getClassLoader()
							.loadClass("org.slf4j.impl.StaticLoggerBinder"))) {
				CodeSource source = one.getProtectionDomain().getCodeSource();
				URL place = source.getLocation();
				places.add(Path.of(place.toURI()).toString());
			}
		} catch (ClassNotFoundException | URISyntaxException e) {
			throw new IllegalStateException(e);
		}
		places.add(System.getProperty("java.class.path"));
		return String.join(File.pathSeparator, places);
	}

	/** The next line that it prints; null at its end. */
	public String line() throws IOException {
		return output.readLine();
	}

	/** Whether it is still there after so many milliseconds. */
	public boolean livesAfter(long millis) throws InterruptedException {
		return !process.waitFor(millis, TimeUnit.MILLISECONDS);
	}

	/** Ends it as the operating system does, without a chance to tidy up: SIGKILL. */
	public void kill() {
		process.toHandle().destroyForcibly(); // the other way would also throw away what it has printed
		process.onExit().join();
	}

	/** Number of the process. */
	public long pid() {
		return process.pid();
	}

	/** Sends a line to it. */
	public void send(String line) throws IOException {
		process.getOutputStream().write((line + "\n").getBytes(StandardCharsets.UTF_8));
		process.getOutputStream().flush();
	}

	@Override
	public void close() {
		kill();
	}
}
