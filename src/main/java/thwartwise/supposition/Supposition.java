package thwartwise.supposition;

import java.util.List;
import thwartwise.crew.NamedPerson;
import thwartwise.remedy.NamedChanges.FoamSpot;

/** One change to be tried on a boat. */
public sealed interface Supposition {

  /**
   * A piece of kit somewhere else along the boat.
   *
   * @param x forward of the aft end, m
   */
  record KitAt(String kit, double x) implements Supposition {}

  /** A piece of kit left ashore. */
  record KitLeft(String kit) implements Supposition {}

  /**
   * More closed-cell foam, fastened.
   *
   * @param volume m³
   */
  record FoamAdded(double volume, FoamSpot spot) implements Supposition {}

  /** These people aboard instead of those of the boat file. */
  record PeopleAboard(List<NamedPerson> people) implements Supposition {
    public PeopleAboard {
      people = List.copyOf(people);
    }
  }
}
