package org.cairnfield.exchange;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

import org.cairnfield.core.text.Words;
import org.cairnfield.exchange.internal.text.NotHeard;
import org.cairnfield.exchange.internal.text.Times;

/** How one file is to be read; filled step by step while it is looked at. */
final class FilePlan {

	/** What a file holds. */
	enum Part {
		TABLE, SIGNALS, COORDINATES, IDS, TIMES, CHANNELS;

		String word() {
			return name().toLowerCase(java.util.Locale.ROOT);
		}
	}

	final Path file;
	Dialect dialect;
	Layout layout;
	Part part = Part.TABLE;
	/** Fields that a sound row has. */
	int width;
	/** The layout of {@link WideTable}: names and texts are taken to the letter, blanks and all. */
	boolean exact;
	/** A row lists what it is about as {@link ListCells}, and so has no columns. */
	boolean listed;
	/** Rows below the header; known only where files must be paired. */
	long rows = -1;
	List<String> names = List.of();
	/** Names of access points by column, cleaned; equal to {@link #names} elsewhere. */
	List<String> signalNames = List.of();
	ColumnRole[] roles = {};
	String[] evidence = {};
	NotHeard notHeard = NotHeard.of(NotHeard.EMPTY);
	/** False where the rows looked at say nothing about what means not heard. */
	boolean notHeardSure;
	double metresPerUnit = 1;
	String site;
	/** From when a column of seconds counts, in milliseconds since 1970; {@link Times#NONE} where times are no such. */
	long timeBaseMillis = Times.NONE;
	/** Whether the site goes by the name of file or folder, since nothing else tells it. */
	boolean siteByName;
	List<List<String>> firstRows = new ArrayList<>();
	final List<Guess> guesses = new ArrayList<>();
	final List<String> notes = new ArrayList<>();
	/** What keeps the file from being read; only gathered for a preview. */
	final List<IntakeException> problems = new ArrayList<>();
	/** Columns taken for buildings or floors by their names alone, although they count up with every row. */
	final Set<Integer> counting = new HashSet<>();
	/** For signals: the other parts. */
	FilePlan coordinates;
	FilePlan ids;
	FilePlan times;
	FilePlan channels;
	/** Columns found wholly out of range while reading. */
	final Set<Integer> leftOut = new HashSet<>();

	FilePlan(Path file) {
		this.file = file;
	}

	/** The first column of a role, from 0, or -1. */
	int column(ColumnRole role) {
		for (int i = 0; i < roles.length; i++) {
			if (roles[i] == role) {
				return i;
			}
		}
		return -1;
	}

	/** This file and, for signals, the other parts. */
	List<FilePlan> parts() {
		return java.util.stream.Stream.of(this, coordinates, ids, times, channels).filter(java.util.Objects::nonNull)
				.toList();
	}

	/** All columns of a role, from 0. */
	int[] columns(ColumnRole role) {
		return java.util.stream.IntStream.range(0, roles.length).filter(i -> roles[i] == role).toArray();
	}

	boolean has(ColumnRole role) {
		return column(role) >= 0;
	}

	boolean hasPosition() {
		return has(ColumnRole.X) && has(ColumnRole.Y);
	}

	void role(int column, ColumnRole role, String why) {
		roles[column] = role;
		evidence[column] = why;
	}

	void note(String note) {
		if (!notes.contains(note)) {
			notes.add(note);
		}
	}

	Guess guess(String what) {
		return guesses.stream().filter(g -> g.what().equals(what)).findFirst().orElse(null);
	}

	/** Puts a guess in place of an earlier one about the same thing. */
	void guess(Guess guess) {
		guesses.removeIf(g -> g.what().equals(guess.what()));
		guesses.add(guess);
	}

	/** How a column is called in messages. */
	String called(int column) {
		return Words.bind(Messages.FilePlan_column, column + 1,
				dialect.header() && column < names.size() && !names.get(column).isEmpty()
						? " (" + CellWords.shown(names.get(column)) + ")"
						: "");
	}
}
