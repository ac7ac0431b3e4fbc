package thwartwise.picture;

/** A point of a picture: units to the right and units down, or metres before they are scaled. */
record Point(double x, double y) {}
