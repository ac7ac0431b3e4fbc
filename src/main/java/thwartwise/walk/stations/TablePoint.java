package thwartwise.walk.stations;

/** A point of a station as the table gives it: forward, out from the middle line, up. */
record TablePoint(TableFigure x, TableFigure y, TableFigure z) {}
