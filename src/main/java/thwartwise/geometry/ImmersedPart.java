package thwartwise.geometry;

/**
 * What lies under a water plane: volume, its first moments, and the waterplane's area and moments.
 *
 * <p>Measured in the water's own axes: u level toward the bow, v level toward port, s up from the
 * surface (see {@link WaterPlane#ahead} and {@link WaterPlane#athwart}); u = v = 0 under the boat's
 * origin. m³, m⁴, m², m³, m⁴.
 *
 * @param volume immersed volume
 * @param momentU ∫u over the volume; likewise V and S
 * @param area of the waterplane
 * @param areaU ∫u over the waterplane; likewise V
 * @param areaUU ∫u² over the waterplane; likewise UV and VV
 */
public record ImmersedPart(
    WaterPlane plane,
    double volume,
    double momentU,
    double momentV,
    double momentS,
    double area,
    double areaU,
    double areaV,
    double areaUU,
    double areaUV,
    double areaVV) {

  public static ImmersedPart of(Solid solid, WaterPlane plane) {
    return new Immersion().at(plane).add(solid, 1).part();
  }

  /** The sum with another part under the same plane. */
  public ImmersedPart plus(ImmersedPart o) {
    return new ImmersedPart(
        plane,
        volume + o.volume,
        momentU + o.momentU,
        momentV + o.momentV,
        momentS + o.momentS,
        area + o.area,
        areaU + o.areaU,
        areaV + o.areaV,
        areaUU + o.areaUU,
        areaUV + o.areaUV,
        areaVV + o.areaVV);
  }

  /** The same with port for starboard. */
  public ImmersedPart mirrored() {
    return new ImmersedPart(
        plane.mirrored(),
        volume,
        momentU,
        -momentV,
        momentS,
        area,
        areaU,
        -areaV,
        areaUU,
        -areaUV,
        areaVV);
  }

  /** Centre of buoyancy in the boat's axes; nothing immersed has none. */
  public Vector3 centroid() {
    if (!(Math.abs(volume) > 0)) {
      throw new IllegalStateException("Centre of buoyancy where nothing is immersed");
    }
    double up = momentS / volume + plane.height();
    return plane
        .ahead()
        .times(momentU / volume)
        .plus(plane.athwart().times(momentV / volume))
        .plus(plane.up().times(up));
  }

  /** Second moment of the waterplane about the level fore-and-aft line through its centre. */
  public double transverseInertia() {
    return area > 0 ? areaVV - areaV * areaV / area : areaVV;
  }

  /** Second moment of the waterplane about the level athwart line through its centre. */
  public double longitudinalInertia() {
    return area > 0 ? areaUU - areaU * areaU / area : areaUU;
  }

  /** Product of inertia of the waterplane about its centre. */
  public double productInertia() {
    return area > 0 ? areaUV - areaU * areaV / area : areaUV;
  }
}
