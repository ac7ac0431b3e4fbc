package thwartwise.benchmark;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import thwartwise.afloat.FloatingBody;
import thwartwise.boat.Boat;
import thwartwise.boat.BoatModel;
import thwartwise.boat.Loading;
import thwartwise.boat.Place;
import thwartwise.files.boat.BoatFile;
import thwartwise.geometry.ImmersedPart;
import thwartwise.geometry.Solid;
import thwartwise.geometry.Vector3;
import thwartwise.geometry.WaterPlane;

/** The boat that comes with the program, its crew aboard and a bag on one side: it heels. */
final class SampleBoat {
  static final LocalDate TODAY = LocalDate.of(2026, 11, 25);

  private SampleBoat() {}

  static FloatingBody dry() {
    BoatModel model = BoatModel.of(boat(), TODAY);
    Loading.Weight bag = new Loading.Weight(15, Vector3.of(2.6, 0.30, 0.2));
    return FloatingBody.dry(new Loading(model, model.aboard(), List.of(bag), 1));
  }

  static Solid outside() {
    return BoatModel.of(boat(), TODAY).form().outside();
  }

  /** The plane under which a solid displaces a volume, at a heel and a trim. */
  static WaterPlane holding(Solid solid, double volume, double heel, double trim) {
    WaterPlane plane = WaterPlane.of(heel, trim, 0);
    double low = solid.extent(plane.up()).from();
    double high = solid.extent(plane.up()).to();
    for (int i = 0; i < 60; i++) {
      plane = plane.withHeight((low + high) / 2);
      if (ImmersedPart.of(solid, plane).volume() < volume) {
        low = plane.height();
      } else {
        high = plane.height();
      }
    }
    return plane;
  }

  /** The same boat empty, with other places. */
  static Boat withPlaces(List<Place> places) {
    Boat boat = boat();
    return new Boat(
        boat.name(),
        boat.water(),
        boat.hull(),
        boat.openings(),
        boat.chambers(),
        places,
        boat.kit(),
        List.of(),
        boat.propulsion(),
        boat.cleats(),
        boat.bailer(),
        boat.waters(),
        boat.measuredBy(),
        boat.assumptions());
  }

  static Boat boat() {
    try (InputStream in = SampleBoat.class.getResourceAsStream("/thwartwise/demo-boat.json")) {
      String json = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      return BoatFile.parse(json, "the demo boat");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
