package thwartwise.remedy;

import thwartwise.boat.Place;

/** Where somebody wants foam. */
public sealed interface FoamSpot {

  /** Under a place to sit. */
  record Under(Place place) implements FoamSpot {
    @Override
    public String words() {
      return FoamFitting.under(place);
    }
  }

  /** In one of the two ends, clear of the people nearest to it. */
  enum End implements FoamSpot {
    BOW,
    STERN;

    @Override
    public String words() {
      return this == BOW ? "in the bow" : "in the stern";
    }
  }

  /** Such as "under the stern bench". */
  String words();
}
