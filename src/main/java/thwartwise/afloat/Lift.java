package thwartwise.afloat;

import thwartwise.geometry.Solid;

/** A solid that gives buoyancy, counted by a factor; a negative one takes an overlap away. */
public record Lift(Solid solid, double factor) {
  double volume() {
    return factor * solid.volume();
  }
}
