package thwartwise.boat;

import java.time.LocalDate;

/**
 * A recorded leak test of a chamber.
 *
 * @param minutes how long it lasted
 * @param litresIn water that got in, litres
 */
public record SealTest(LocalDate date, String how, double minutes, double litresIn, String by) {}
