package org.cairnfield.core.simulate;

import java.util.List;

/**
 * The mean level of every access point at every place of a campus: radiated power less path loss, floors, walls
 * and shadowing. Immutable once made; safe for several threads.
 *
 * <p>Walls counted are those of the receiver's floor. From another site nothing of its inside is known to the
 * wave but two outer walls, and shadowing is one value a site.
 */
final class LevelModel {

	/** Height of a receiver above its floor. */
	private static final double RECEIVER_METRES = 1.2;
	/** Height of an access point above its floor. */
	private static final double SENDER_METRES = 2.8;
	private static final double BETWEEN_SITES_DB = 24;
	/** Shadowing beyond this many standard deviations is not looked for. */
	private static final double WIDEST_SHADOW = 3;

	private final Campus campus;
	private final RadioEnvironment environment;
	private final double cutoffDbm;
	private final Sender[] senders;
	private final Wall[][][] walls;

	/** @param cutoffDbm means below that are not asked for */
	LevelModel(Campus campus, RadioEnvironment environment, long seed, double cutoffDbm) {
		this.campus = campus;
		this.environment = environment;
		this.cutoffDbm = cutoffDbm;
		List<AccessPoint> accessPoints = campus.accessPoints();
		long key = Streams.key(seed, "shadowing");
		senders = new Sender[accessPoints.size()];
		for (int i = 0; i < senders.length; i++) {
			senders[i] = new Sender(accessPoints.get(i), key);
		}
		walls = new Wall[campus.sites().size()][][];
		for (int s = 0; s < walls.length; s++) {
			List<Floor> floors = campus.sites().get(s).floors();
			walls[s] = new Wall[floors.size()][];
			for (int f = 0; f < walls[s].length; f++) {
				walls[s][f] = floors.get(f).walls().toArray(new Wall[0]);
			}
		}
	}

	int accessPointCount() {
		return senders.length;
	}

	/** What of an access point does not depend on the receiver. */
	private final class Sender {
		final AccessPoint accessPoint;
		final double campusX;
		final double campusY;
		final int floorIndex;
		final double heightMetres;
		/** Power less loss at 1 m on its own floor. */
		final double atOneMetreDbm;
		final ShadowField shadow;
		final long shadowKey;
		/** Squared distance beyond which it cannot reach the cutoff, by floors between. */
		final double[] squaredReach;
		final double squaredReachAbroad;

		Sender(AccessPoint accessPoint, long shadowingKey) {
			this.accessPoint = accessPoint;
			Site site = campus.sites().get(accessPoint.site());
			campusX = site.eastMetres() + accessPoint.x();
			campusY = site.northMetres() + accessPoint.y();
			floorIndex = accessPoint.level() - site.floors().get(0).level();
			heightMetres = floorIndex * site.floorHeightMetres() + SENDER_METRES;
			double n = environment.loss().distanceCoefficient();
			atOneMetreDbm = accessPoint.powerDbm()
					- ItuIndoor.lossDb(n, 1, accessPoint.channel().centreMhz(), 0);
			// By address of the first one there, and place: an access point hung elsewhere is shadowed anew, the others as before.
			long own = Streams.key(shadowingKey, accessPoint.shadowedAs().value());
			own = Streams.key(own, accessPoint.level());
			own = Streams.key(own, Double.doubleToLongBits(accessPoint.x()));
			shadowKey = Streams.key(own, Double.doubleToLongBits(accessPoint.y()));
			shadow = new ShadowField(site, shadowKey, environment.correlationMetres(),
					environment.floorCorrelation());
			squaredReach = new double[site.floors().size()];
			for (int between = 0; between < squaredReach.length; between++) {
				squaredReach[between] = squaredReach(environment.loss().floorLossDb(between), n);
			}
			squaredReachAbroad = squaredReach(BETWEEN_SITES_DB, n);
		}

		private double squaredReach(double extraLossDb, double n) {
			double spare = atOneMetreDbm - extraLossDb + WIDEST_SHADOW * environment.shadowingSdDb() - cutoffDbm;
			return spare < 0 ? 0 : Math.pow(10, 2 * spare / n);
		}
	}

	/** The mean level in dBm, or negative infinity where it is certainly below the cutoff. */
	double meanDbm(int accessPoint, int siteIndex, int receiverFloor, double x, double y) {
		Sender sender = senders[accessPoint];
		Site site = campus.sites().get(siteIndex);
		double dx = site.eastMetres() + x - sender.campusX;
		double dy = site.northMetres() + y - sender.campusY;
		double dz = receiverFloor * site.floorHeightMetres() + RECEIVER_METRES - sender.heightMetres;
		double squared = Math.max(1, dx * dx + dy * dy + dz * dz);
		boolean abroad = sender.accessPoint.site() != siteIndex;
		int between = Math.abs(receiverFloor - sender.floorIndex);
		if (squared > (abroad ? sender.squaredReachAbroad : sender.squaredReach[between])) {
			return Double.NEGATIVE_INFINITY;
		}
		double shadow = abroad ? Streams.gaussian(Streams.key(sender.shadowKey, -1L - siteIndex))
				: sender.shadow.at(receiverFloor, x, y);
		double level = sender.atOneMetreDbm - environment.loss().distanceCoefficient() * 0.5 * Math.log10(squared)
				+ environment.shadowingSdDb() * shadow;
		if (abroad) {
			return level - BETWEEN_SITES_DB;
		}
		level -= environment.loss().floorLossDb(between);
		return level < cutoffDbm ? Double.NEGATIVE_INFINITY : level - wallsDb(sender, siteIndex, receiverFloor, x, y);
	}

	private double wallsDb(Sender sender, int siteIndex, int receiverFloor, double x, double y) {
		double sum = 0;
		for (Wall wall : walls[siteIndex][receiverFloor]) {
			if (wall.isBetween(sender.accessPoint.x(), sender.accessPoint.y(), x, y)) {
				sum += wall.attenuationDb();
			}
		}
		return Math.min(sum, environment.mostWallsDb());
	}
}
