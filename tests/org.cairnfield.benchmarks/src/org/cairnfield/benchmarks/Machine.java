package org.cairnfield.benchmarks;

import java.lang.management.ManagementFactory;
import java.util.Locale;

/** What is measured on, and how busy it is with other things. */
final class Machine {

	private static final com.sun.management.OperatingSystemMXBean SYSTEM = (com.sun.management.OperatingSystemMXBean) ManagementFactory
			.getOperatingSystemMXBean();

	private Machine() {
	}

	static int cores() {
		return Runtime.getRuntime().availableProcessors();
	}

	/** Processor time of this JVM. */
	static long cpuNanos() {
		return SYSTEM.getProcessCpuTime();
	}

	/** Processes wanting to run, mean of the last minute; this one included. */
	static double load() {
		return SYSTEM.getSystemLoadAverage();
	}

	static String description() {
		return String.format(Locale.ROOT, "%d cores, %s, %s %s, heap up to %d MiB", cores(),
				System.getProperty("os.arch"), System.getProperty("java.vm.name"), Runtime.version(),
				Runtime.getRuntime().maxMemory() >> 20);
	}
}
