package thwartwise.sampleboats;

import thwartwise.boat.Boat;

/**
 * A boat somebody wrote down wrongly.
 *
 * @param truth as it is
 * @param entered as it was written down
 * @param how which reading, and how
 */
record SlippedBoat(Boat truth, Boat entered, String how) {}
