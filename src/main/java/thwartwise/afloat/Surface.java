package thwartwise.afloat;

import thwartwise.geometry.ImmersedPart;
import thwartwise.geometry.WaterPlane;

/**
 * A level surface with a wanted volume under it, or nearly so: the sea about a boat, or the water
 * inside one. What is still missing is allowed for to first order in the moments, as Newton's
 * equations give it when the height is eliminated from them.
 *
 * @param part what lies under the surface as it stands
 * @param rise how far it still has to rise by its own area, m; zero where no more can be found out
 */
record Surface(ImmersedPart part, double rise) {

  WaterPlane plane() {
    return part.plane();
  }

  double height() {
    return part.plane().height() + rise;
  }

  /** Where it will stand after a small turn: it pivots on the middle of its area. */
  double heightAfter(double heel, double trim) {
    return height() + (heel * part.areaV() - trim * part.areaU()) / part.area();
  }

  double momentU() {
    return part.momentU() + rise * part.areaU();
  }

  double momentV() {
    return part.momentV() + rise * part.areaV();
  }

  /** First moment of the volume about the surface as it stands; what is missing, to its middle. */
  double momentS() {
    return part.momentS() + rise * rise * part.area() / 2;
  }
}
