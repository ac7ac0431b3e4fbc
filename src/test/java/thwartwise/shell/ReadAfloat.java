package thwartwise.shell;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import thwartwise.afloat.Pose;
import thwartwise.boat.AfloatProof;
import thwartwise.boat.Boat;
import thwartwise.boat.BoatModel;
import thwartwise.boat.Body;
import thwartwise.boat.Loading.Weight;
import thwartwise.boat.Place;
import thwartwise.geometry.Vector3;
import thwartwise.hull.Station;
import thwartwise.loadcase.LoadedBoat;

/**
 * What somebody reads of a boat afloat with a tape, to the millimetre, as it is typed at "prove": a
 * boat that is there, whatever was stated of it.
 */
record ReadAfloat(Boat truth, LocalDate today) {
  private static final double WEIGHT = 15;
  private static final double OUT = 0.30;

  /** Nobody aboard, one person of 70 kg on the first place, a weight moved across, nothing more. */
  List<String> lines() {
    Place place = truth.places().get(0);
    List<String> lines = new ArrayList<>();
    lines.add(around(rest(List.of(), List.of())));
    lines.add("Ann; 70; " + place.name());
    lines.add("");
    lines.add("no");
    Body ann = Body.at("Ann", 70, place, Vector3.of(place.x(), 0, place.z()), truth.hull().floor());
    lines.add(around(rest(List.of(ann), List.of())));
    lines.add("15; " + place.x() + "; 0.20");
    lines.add("rails");
    lines.add(toSide(place, 1));
    lines.add(toSide(place, -1));
    lines.addAll(List.of("no", "today", "Bea", "no"));
    return lines;
  }

  private String toSide(Place place, int side) {
    Pose pose =
        rest(List.of(), List.of(new Weight(WEIGHT, Vector3.of(place.x(), side * OUT, 0.20))));
    return OUT + "; " + amidships(pose);
  }

  private Pose rest(List<Body> people, List<Weight> weights) {
    LoadedBoat boat = LoadedBoat.of(BoatModel.of(truth, today), people);
    for (Weight weight : weights) {
      boat = boat.with(weight);
    }
    return boat.atRest().worst().orElseThrow();
  }

  private String around(Pose pose) {
    List<Station> stations = truth.hull().stations();
    return read(pose, stations.get(stations.size() - 1).portRail())
        + "; "
        + read(pose, stations.get(0).portRail())
        + "; "
        + amidships(pose);
  }

  private String amidships(Pose pose) {
    Station middle = truth.hull().stations().get(AfloatProof.amidships(truth.hull()));
    return read(pose, middle.portRail()) + "; " + read(pose, middle.starboardRail());
  }

  private static String read(Pose pose, Vector3 rail) {
    return String.format(Locale.ROOT, "%.3f", pose.above(rail));
  }
}
