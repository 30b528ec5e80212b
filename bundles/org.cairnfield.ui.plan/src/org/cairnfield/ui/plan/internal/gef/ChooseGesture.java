package org.cairnfield.ui.plan.internal.gef;

import org.cairnfield.ui.plan.internal.model.ShownPlace;

/** A click on the place of an access point chooses it. */
final class ChooseGesture extends Gesture {

	private final PlanCanvas plan;
	private final ShownPlace place;

	ChooseGesture(PlanCanvas plan, ShownPlace place) {
		this.plan = plan;
		this.place = place;
	}

	@Override
	void drag() {
		// it stays where it is
	}

	@Override
	void dragged() {
		// likewise
	}

	@Override
	void click() {
		plan.choice().choose(place.accessPoint());
	}

	@Override
	void erase() {
		// nothing was shown
	}
}
