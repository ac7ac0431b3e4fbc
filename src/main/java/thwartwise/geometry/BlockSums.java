package thwartwise.geometry;

/**
 * Sums over blocks along the axes of which the water cuts the four upright edges only, in closed
 * form. Not thread-safe.
 *
 * <p>Such a part is a prism over the block's rectangle, cut off aslant. Its depth is linear over
 * the rectangle, so volume and moments follow from the depth in the middle and the two slopes (∫ξ²
 * over a side of half length h is 2h³/3). The waterplane is the rectangle seen along the upright:
 * its area that of the rectangle over the cosine, and every coordinate in it linear over the
 * rectangle. Where the water cuts a block otherwise, its triangles are summed.
 */
final class BlockSums {
  double volume;
  double momentX;
  double momentY;
  double momentZ;
  double area;
  double areaU;
  double areaV;
  double areaUU;
  double areaUV;
  double areaVV;

  void clear() {
    volume = momentX = momentY = momentZ = 0;
    area = areaU = areaV = areaUU = areaUV = areaVV = 0;
  }

  /**
   * Adds the part of a block under a plane.
   *
   * @param ahead level direction of u, athwart of v
   * @return whether it could; otherwise nothing is added
   */
  boolean add(Bounds block, WaterPlane plane, Vector3 ahead, Vector3 athwart, double factor) {
    Vector3 up = plane.up();
    Vector3 centre = block.centre();
    Vector3 half = block.half();
    // Rise of the water along x and y, and how high it stands over the middle of the block.
    double slopeX = -up.x() / up.z();
    double slopeY = -up.y() / up.z();
    double over = (plane.height() - up.dot(centre)) / up.z();
    double aslant = Math.abs(slopeX) * half.x() + Math.abs(slopeY) * half.y();
    if (!(up.z() > 0) || !(Math.abs(over) + aslant < half.z())) {
      return false;
    }
    double foot = 4 * half.x() * half.y();
    double secondX = half.x() * half.x() / 3;
    double secondY = half.y() * half.y() / 3;
    double depth = over + half.z();
    double share = factor * foot;
    double bottom = centre.z() - half.z();
    double squared = depth * depth + slopeX * slopeX * secondX + slopeY * slopeY * secondY;
    volume += share * depth;
    momentX += share * (centre.x() * depth + slopeX * secondX);
    momentY += share * (centre.y() * depth + slopeY * secondY);
    momentZ += share * (bottom * depth + squared / 2);
    double level = centre.z() + over;
    addWaterplane(
        share / up.z(),
        ahead.x() * centre.x() + ahead.y() * centre.y() + ahead.z() * level,
        ahead.x() + slopeX * ahead.z(),
        ahead.y() + slopeY * ahead.z(),
        athwart.x() * centre.x() + athwart.y() * centre.y() + athwart.z() * level,
        athwart.x() + slopeX * athwart.z(),
        athwart.y() + slopeY * athwart.z(),
        secondX,
        secondY);
    return true;
  }

  /** A parallelogram about (u, v), in which both grow evenly along x and along y. */
  private void addWaterplane(
      double size,
      double u,
      double uAlongX,
      double uAlongY,
      double v,
      double vAlongX,
      double vAlongY,
      double secondX,
      double secondY) {
    area += size;
    areaU += size * u;
    areaV += size * v;
    areaUU += size * (u * u + uAlongX * uAlongX * secondX + uAlongY * uAlongY * secondY);
    areaUV += size * (u * v + uAlongX * vAlongX * secondX + uAlongY * vAlongY * secondY);
    areaVV += size * (v * v + vAlongX * vAlongX * secondX + vAlongY * vAlongY * secondY);
  }
}
