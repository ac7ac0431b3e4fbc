package thwartwise.measured;

import java.util.Map;

/**
 * One value of a file, taken for what it should be. The remedy says what to do when it is not that.
 */
public interface ScalarSource {
  /** A number in the unit of the file. */
  double number(BoatQuantity quantity, String remedy);

  boolean truth();

  String words(String remedy);

  <T> T oneOf(Map<String, T> byWord, String remedy);
}
