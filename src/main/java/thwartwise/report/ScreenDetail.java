package thwartwise.report;

/**
 * How much of each part of the screen is told.
 *
 * @param seatRows rows of the table of who sits where
 * @param seatLines lines that the seats of one row may take; none for the page alone
 * @param pieces of advice
 * @param prices whether the price of each piece of advice is told whole
 * @param gains whether all that it buys is told, not the most telling of it alone
 * @param wrong mishaps told; at least one is
 * @param acts told of those that nobody does
 */
record ScreenDetail(
    int seatRows, int seatLines, int pieces, boolean prices, boolean gains, int wrong, int acts) {}
