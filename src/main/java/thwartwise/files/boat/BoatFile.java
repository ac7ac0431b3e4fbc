package thwartwise.files.boat;

import java.nio.file.Path;
import thwartwise.boat.Boat;
import thwartwise.json.Format;
import thwartwise.json.InputFile;
import thwartwise.json.JsonText;
import thwartwise.json.Layout;
import thwartwise.json.Location;

/**
 * The boat file, {@code thwartwise/boat/1}: JSON in metres, kilograms and litres. It is read
 * strictly, because an ignored key would be an ignored measurement.
 */
public final class BoatFile {
  private BoatFile() {}

  /**
   * Reads a boat from a file.
   *
   * @throws UnusableInput with one line: where, what was there, what was wanted, what to do
   */
  public static Boat read(Path file) {
    String json = InputFile.text(file, Format.BOAT.noun(), InputFile.BOAT_BYTES);
    return parse(json, file.toString());
  }

  /**
   * Reads a boat from text.
   *
   * @param where what messages call the text
   * @throws UnusableInput as for a file
   */
  public static Boat parse(String json, String where) {
    Location spot = Location.whole(where);
    return BoatCodec.read(JsonText.parse(json, spot), spot);
  }

  /** The text of the file; reading it gives the same boat again. */
  public static String write(Boat boat) {
    return Layout.of(BoatCodec.write(boat));
  }
}
