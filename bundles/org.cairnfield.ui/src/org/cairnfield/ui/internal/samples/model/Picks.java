package org.cairnfield.ui.internal.samples.model;

import java.util.Arrays;
import java.util.BitSet;

/**
 * Which samples of a table are picked, by the rules that people know from other tables: a plain pick takes one alone, with
 * Ctrl it is added or taken away, with Shift all between it and the last plain pick. Rows may be many, so it knows no widget
 * and no object for each. Not for several threads.
 */
public final class Picks {

	private Arrangement arrangement = Arrangement.NONE;
	private final BitSet chosen = new BitSet();
	private int focus = -1;
	private int anchor = -1;

	/** The same samples in another order or number: what was picked stays so, even where it is not shown. */
	public void arrange(Arrangement other) {
		arrangement = other;
	}

	/** Other samples: nothing is picked, until {@link #set}. */
	public void reset(Arrangement other) {
		arrangement = other;
		chosen.clear();
		focus = -1;
		anchor = -1;
	}

	/** Picks one alone. */
	public void choose(int position) {
		chosen.clear();
		chosen.set(arrangement.index(position));
		moveTo(position);
	}

	/** Adds one, or takes it away. */
	public void toggle(int position) {
		chosen.flip(arrangement.index(position));
		moveTo(position);
	}

	/** Picks all between the last plain pick and this position. */
	public void extend(int position) {
		int from = anchor < 0 ? -1 : arrangement.position(anchor);
		if (from < 0) {
			choose(position);
			return;
		}
		chosen.clear();
		for (int p = Math.min(from, position); p <= Math.max(from, position); p++) {
			chosen.set(arrangement.index(p));
		}
		focus = arrangement.index(position);
	}

	/** Goes there without picking. */
	public void focus(int position) {
		focus = arrangement.index(position);
	}

	/** Picks all that is shown. */
	public void all() {
		chosen.clear();
		for (int p = 0; p < arrangement.size(); p++) {
			chosen.set(arrangement.index(p));
		}
		if (focus < 0 && arrangement.size() > 0) {
			moveTo(0);
		}
	}

	/** Picks these, by index; the first is gone to. */
	public void set(int[] indices) {
		chosen.clear();
		for (int index : indices) {
			chosen.set(index);
		}
		focus = indices.length == 0 ? focus : indices[0];
		anchor = focus;
	}

	private void moveTo(int position) {
		focus = arrangement.index(position);
		anchor = focus;
	}

	public boolean isChosen(int position) {
		return chosen.get(arrangement.index(position));
	}

	/** How many are picked, shown or not. */
	public int size() {
		return chosen.cardinality();
	}

	/** How many of them are shown. */
	public int shown() {
		int shown = 0;
		for (int index = chosen.nextSetBit(0); index >= 0; index = chosen.nextSetBit(index + 1)) {
			shown += arrangement.position(index) >= 0 ? 1 : 0;
		}
		return shown;
	}

	/** Position that keys go on from, or −1. */
	public int focusPosition() {
		return focus < 0 ? -1 : arrangement.position(focus);
	}

	/** Indices of what is picked: those shown in their order, then the others. */
	public int[] indices() {
		int[] indices = new int[chosen.cardinality()];
		int count = 0;
		if (indices.length < arrangement.size() / 64) { // few of many
			int hidden = indices.length;
			int[] positions = new int[indices.length];
			for (int index = chosen.nextSetBit(0); index >= 0; index = chosen.nextSetBit(index + 1)) {
				int position = arrangement.position(index);
				if (position >= 0) {
					positions[count++] = position;
				} else {
					indices[--hidden] = index;
				}
			}
			Arrays.sort(positions, 0, count);
			for (int i = 0; i < count; i++) {
				indices[i] = arrangement.index(positions[i]);
			}
			return indices;
		}
		for (int p = 0; p < arrangement.size(); p++) {
			if (chosen.get(arrangement.index(p))) {
				indices[count++] = arrangement.index(p);
			}
		}
		for (int index = chosen.nextSetBit(0); index >= 0; index = chosen.nextSetBit(index + 1)) {
			if (arrangement.position(index) < 0) {
				indices[count++] = index;
			}
		}
		return indices;
	}
}
