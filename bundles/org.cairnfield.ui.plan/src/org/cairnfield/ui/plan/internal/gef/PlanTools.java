package org.cairnfield.ui.plan.internal.gef;

import java.util.Optional;

import org.eclipse.draw2d.IFigure;

/** What can be set on the plan by tools of their own, one at a time. */
public final class PlanTools {

	private final OutlineEditor outline;
	private final MountEditor mount;

	PlanTools(PlanCanvas plan) {
		outline = new OutlineEditor(plan);
		mount = new MountEditor(plan);
	}

	IFigure[] figures() {
		return new IFigure[] { outline.figure(), mount.figure() };
	}

	/** Draws the outline of the floor, or changes it. */
	public OutlineEditor outline() {
		return outline;
	}

	/** Sets where an access point is mounted. */
	public MountEditor mount() {
		return mount;
	}

	/** What takes mouse and keys at the moment; null for none. */
	PlanTool active() {
		return outline.isOn() ? outline : mount.isOn() ? mount : null;
	}

	/** Where the tool that is at work stands, in words; empty where none is. */
	public Optional<String> words() {
		return Optional.ofNullable(active()).map(PlanTool::words);
	}

	/** The archive has changed. */
	void check() {
		if (active() != null) {
			active().check();
		}
	}

	/** The person goes elsewhere: what can be kept is kept. */
	void leave() {
		if (active() != null) {
			active().leave();
		}
	}

	/** Nothing is kept. */
	void giveUp() {
		if (active() != null) {
			active().giveUp();
		}
	}
}
