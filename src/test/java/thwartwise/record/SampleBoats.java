package thwartwise.record;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import thwartwise.boat.Boat;
import thwartwise.boat.Kit;
import thwartwise.files.boat.BoatFile;
import thwartwise.geometry.Vector3;

/** A small boat read from its file, and the same with something changed. */
public final class SampleBoats {
  private SampleBoats() {}

  public static String json() {
    try (InputStream in =
        SampleBoats.class.getResourceAsStream("/thwartwise/files/soup-ladle.json")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  public static Boat plain() {
    return BoatFile.parse(json(), "soup.json");
  }

  /** The boat after some of the text of its file was replaced. */
  public static Boat with(String there, String instead) {
    return BoatFile.parse(json().replace(there, instead), "soup.json");
  }

  public static Boat withKit(Boat boat, String name, double mass) {
    List<Kit> kit = new ArrayList<>(boat.kit());
    Vector3 at = Vector3.of(1.2, 0, 0.12);
    kit.add(new Kit(name, mass, at, Optional.empty(), true, Optional.empty()));
    return boat.withKit(kit);
  }

  public static Boat withoutKit(Boat boat, String name) {
    return boat.withKit(boat.kit().stream().filter(kit -> !kit.name().equals(name)).toList());
  }
}
