package org.cairnfield.archive.torture;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import com.sun.jdi.Bootstrap;
import com.sun.jdi.IncompatibleThreadStateException;
import com.sun.jdi.IntegerValue;
import com.sun.jdi.Location;
import com.sun.jdi.Method;
import com.sun.jdi.ReferenceType;
import com.sun.jdi.StackFrame;
import com.sun.jdi.VMDisconnectedException;
import com.sun.jdi.VirtualMachine;
import com.sun.jdi.connect.Connector;
import com.sun.jdi.connect.IllegalConnectorArgumentsException;
import com.sun.jdi.connect.ListeningConnector;
import com.sun.jdi.event.BreakpointEvent;
import com.sun.jdi.event.Event;
import com.sun.jdi.event.EventSet;
import com.sun.jdi.request.BreakpointRequest;
import com.sun.jdi.request.EventRequest;

/**
 * Stops another Java just before a step that changes the disk, by breakpoints in the class library where it calls the
 * operating system: opening a file to be made, writing, forcing, moving, linking and deleting.
 */
final class DiskSteps implements AutoCloseable {

	static final String AT_THE_REMOTE = "at the remote, ";
	private static final String RECEIVER = "JGit-Receive-Pack"; // the thread that serves a repository in a folder

	private static final int TO_BE_MADE = 0x40; // O_CREAT of open(2) on Linux
	private static final int READ_AND_WRITE = 2; // of RandomAccessFile
	private static final Map<String, List<String>> CALLS = Map.of(
			"sun.nio.fs.UnixNativeDispatcher", List.of("open", "rename", "link", "symlink", "unlink", "mkdir", "rmdir"),
			"java.io.UnixFileSystem", List.of("rename", "delete"),
			"java.io.File", List.of("createNewFile", "createTempFile", "mkdir"),
			"java.io.FileOutputStream", List.of("open", "write"),
			"java.io.RandomAccessFile", List.of("open", "write"),
			"sun.nio.ch.FileDispatcherImpl", List.of("write", "pwrite", "force", "truncate"));

	private final ListeningConnector connector;
	private final Map<String, Connector.Argument> arguments;
	private final String address;
	private VirtualMachine machine;

	private DiskSteps(ListeningConnector connector, Map<String, Connector.Argument> arguments, String address) {
		this.connector = connector;
		this.arguments = arguments;
		this.address = address;
	}

	/** Gets ready for one to be started. */
	static DiskSteps listen() throws IOException {
		ListeningConnector connector = Bootstrap.virtualMachineManager().listeningConnectors().stream()
				.filter(one -> one.transport().name().equals("dt_socket")).findFirst().orElseThrow();
		Map<String, Connector.Argument> arguments = connector.defaultArguments();
		arguments.get("localAddress").setValue("127.0.0.1");
		try {
			return new DiskSteps(connector, arguments, connector.startListening(arguments));
		} catch (IllegalConnectorArgumentsException e) {
			throw new IllegalStateException(e);
		}
	}

	/** What it is to be started with. */
	String option() {
		return "-agentlib:jdwp=transport=dt_socket,server=n,suspend=n,address=" + address;
	}

	/** Waits until it has been started; it does not start without. */
	void accept() throws IOException {
		try {
			machine = connector.accept(arguments);
		} catch (IllegalConnectorArgumentsException e) {
			throw new IllegalStateException(e);
		}
	}

	/** From now on each step is seen. */
	void watch() {
		CALLS.forEach((type, names) -> methods(type, names).forEach(this::stopAt));
	}

	private List<Method> methods(String type, List<String> names) {
		List<Method> methods = new ArrayList<>();
		for (ReferenceType one : machine.classesByName(type)) {
			one.methods().stream()
					.filter(method -> names.contains(method.name()) && !method.isNative() && !method.isAbstract())
					.forEach(methods::add);
		}
		if (methods.isEmpty()) {
			throw new IllegalStateException(type + " has none of " + names);
		}
		return methods;
	}

	private void stopAt(Method method) {
		BreakpointRequest request = machine.eventRequestManager().createBreakpointRequest(method.location());
		request.setSuspendPolicy(EventRequest.SUSPEND_EVENT_THREAD);
		request.enable();
	}

	/**
	 * Lets it go on until it is about to take a step.
	 *
	 * @param steps how many it may take before
	 * @return names of the steps taken, and last that of the one it is about to take; fewer than that if it has ended
	 */
	List<String> take(int steps) throws InterruptedException {
		List<String> names = new ArrayList<>();
		try {
			while (true) {
				EventSet events = machine.eventQueue().remove();
				for (Event event : events) {
					if (event instanceof BreakpointEvent stop) {
						name(stop).ifPresent(names::add);
						if (names.size() > steps) {
							return names;
						}
					}
				}
				events.resume();
			}
		} catch (VMDisconnectedException e) {
			return names;
		}
	}

	/** @return empty where nothing on the disk changes by it */
	private static Optional<String> name(BreakpointEvent stop) {
		try {
			List<StackFrame> frames = stop.thread().frames();
			Method call = stop.location().method();
			if (call.name().equals("open") && !mayWrite(frames.get(0), call.declaringType().name())) {
				return Optional.empty();
			}
			Map<String, Location> places = new LinkedHashMap<>();
			for (StackFrame frame : frames) {
				String type = frame.location().declaringType().name();
				if (type.equals("java.io.PrintStream")) {
					return Optional.empty();
				}
				if (type.contains("$$Lambda")) { // numbered anew in each Java
					continue;
				}
				places.putIfAbsent(
						type.startsWith("org.cairnfield.archive.internal") ? "ours"
								: type.startsWith("org.eclipse.jgit") ? "git" : "other",
						frame.location());
			}
			Location place = places.getOrDefault("ours", places.getOrDefault("git", places.get("other")));
			String type = place.declaringType().name();
			String where = stop.thread().name().equals(RECEIVER) ? AT_THE_REMOTE : "";
			return Optional.of(where + type.substring(type.lastIndexOf('.') + 1) + '.' + place.method().name() + ": "
					+ call.name());
		} catch (IncompatibleThreadStateException e) {
			throw new IllegalStateException(e);
		}
	}

	private static boolean mayWrite(StackFrame open, String type) {
		return open.getArgumentValues().get(1) instanceof IntegerValue flags
				? (flags.value() & (type.startsWith("sun.nio.fs") ? TO_BE_MADE : READ_AND_WRITE)) != 0
				: true; // of an output stream
	}

	@Override
	public void close() throws IOException {
		try {
			connector.stopListening(arguments);
		} catch (IllegalConnectorArgumentsException e) {
			throw new IllegalStateException(e);
		}
	}
}
