package org.cairnfield.spark;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.hadoop.conf.Configuration;
import org.apache.hadoop.fs.FileStatus;
import org.apache.hadoop.fs.FileSystem;
import org.apache.hadoop.fs.Path;
import org.apache.spark.api.java.JavaRDD;
import org.apache.spark.api.java.JavaSparkContext;
import org.apache.spark.broadcast.Broadcast;
import org.apache.spark.util.SerializableConfiguration;
import org.cairnfield.core.map.RadioMapBuilder;
import org.cairnfield.core.task.Workers;
import org.cairnfield.exchange.Intake;
import org.cairnfield.exchange.IntakeException;
import org.cairnfield.exchange.Mapping;
import org.cairnfield.exchange.Quarantine;
import org.cairnfield.exchange.SurveyIntake;

/** Survey files from wherever Spark can read, each taken in by one task as the workbench does it. */
final class SurveyFiles {

	private SurveyFiles() {
	}

	/**
	 * @param files   paths, folders or patterns, in the order in which they are taken in
	 * @param mapping how to read them, as a mapping file has it
	 * @throws JobException where there is no such file
	 */
	static JavaRDD<SurveyPart> read(JavaSparkContext spark, List<String> files, String mapping) throws JobException {
		List<String> found = new ArrayList<>();
		for (String file : files) {
			found.addAll(resolve(file, spark.hadoopConfiguration()));
		}
		Broadcast<SerializableConfiguration> configuration = spark
				.broadcast(new SerializableConfiguration(spark.hadoopConfiguration()));
		List<Integer> indices = IntStream.range(0, found.size()).boxed().toList();
		int parts = Math.max(1, Math.min(found.size(), 8 * spark.defaultParallelism()));
		return spark.parallelize(new ArrayList<>(indices), parts)
				.map(i -> read(i, found.get(i), mapping, configuration.value().value()));
	}

	private static List<String> resolve(String file, Configuration configuration) throws JobException {
		try {
			Path path = new Path(file);
			FileSystem system = path.getFileSystem(configuration);
			FileStatus[] found = system.globStatus(path);
			if (found == null || found.length == 0) {
				throw new JobException(JobException.INPUT, "there is no " + file);
			}
			List<FileStatus> files = new ArrayList<>();
			for (FileStatus each : found) {
				files.addAll(each.isDirectory()
						? Arrays.stream(system.listStatus(each.getPath())).filter(FileStatus::isFile).toList()
						: List.of(each));
			}
			return files.stream().map(FileStatus::getPath)
					.filter(p -> !p.getName().startsWith(".") && !p.getName().startsWith("_"))
					.sorted(Comparator.comparing(Path::toString)).map(Path::toString).toList();
		} catch (IOException | IllegalArgumentException e) {
			throw new JobException(JobException.INPUT, file + " cannot be read: " + e.getMessage());
		}
	}

	private static SurveyPart read(int index, String file, String mapping, Configuration configuration)
			throws IOException {
		Path path = new Path(file);
		java.nio.file.Path folder = Files.createTempDirectory("cairnfield");
		java.nio.file.Path copy = folder.resolve(path.getName()); // its name tells of sites and parts
		try {
			try (InputStream in = path.getFileSystem(configuration).open(path)) {
				Files.copy(in, copy);
			}
			Intake intake = SurveyIntake.read(List.of(copy), Mapping.parse(mapping), Workers.inline());
			Quarantine quarantine = intake.quarantines().get(0);
			return new SurveyPart(index, path.getName(), intake.reports().get(0).surveyName(), intake.map(),
					intake.sampleIds(),
					quarantine.rows().stream().map(r -> new SurveyPart.BadRow(r.line(), r.reason(), r.record()))
							.toList(),
					quarantine.omitted(), null);
		} catch (IntakeException e) {
			String line = e.line() > 0 ? ", line " + e.line() : "";
			return new SurveyPart(index, path.getName(), path.getName(), new RadioMapBuilder().build(), List.of(),
					List.of(), 0,
					file + line + ": " + e.what() + ". " + e.remedy() + ".");
		} finally {
			Files.deleteIfExists(copy);
			Files.delete(folder);
		}
	}
}
