package thwartwise.hull;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import thwartwise.geometry.Box;
import thwartwise.geometry.Solid;
import thwartwise.geometry.Span;
import thwartwise.geometry.Vector3;

/**
 * The solids of a hull: its outside up to a lid at the rail, its inside, its thin shell, its skeg,
 * and the faired rail.
 *
 * <p>Lines are faired between stations (see {@link FairedCurve}); across a station the surface is
 * straight from point to point, as a plywood panel is.
 */
public final class HullForm {
  /** The bulge of a line beyond the flat triangles that stand for it: less than a tape shows. */
  private static final double SAG = 0.0003;

  /** The shell's few litres need no finer triangles than this. */
  private static final double SHELL_SAG = 0.002;

  private final HullMeasurements measured;
  private final List<Section> sections;
  private final Solid outside;
  private final Solid inside;
  private final Solid straightInside;
  private final Solid shellOutside;
  private final Solid shellInside;
  private final Loft.AreaCentre skin;
  private final Solid skeg;
  private final List<Span> crossings;
  private final Map<Box, Solid> insideParts = new ConcurrentHashMap<>();
  private final Map<Box, Double> straightVolumes = new ConcurrentHashMap<>();
  private final Map<ChamberCut, Solid> chamberParts = new ConcurrentHashMap<>();

  private record ChamberCut(Box chamber, Box box) {}

  private final Slices shellOutsideSlices;
  private final Slices shellInsideSlices;

  private HullForm(HullMeasurements measured) {
    this.measured = measured;
    FairedLines lines = FairedLines.through(measured.stations());
    this.sections = lines.sections(SAG);
    this.outside = Loft.closed(sections);
    this.inside = Loft.closed(InsideOffset.inward(lines, sections, measured.thickness()));
    List<Section> coarse = lines.sections(SHELL_SAG);
    FairedLines straight = FairedLines.straight(measured.stations());
    this.straightInside =
        Loft.closed(InsideOffset.inward(straight, straight.sections(SAG), measured.thickness()));
    this.shellOutside = Loft.closed(coarse);
    this.shellInside = Loft.closed(InsideOffset.inward(lines, coarse, measured.thickness()));
    this.shellOutsideSlices = new Slices(shellOutside);
    this.shellInsideSlices = new Slices(shellInside);
    this.skin = Loft.areaOf(Loft.withoutLid(sections));
    List<Vector3> keel = sections.stream().map(s -> s.port().get(0)).toList();
    this.crossings = lines.crossings();
    this.skeg = measured.skeg().map(s -> SkegSolid.of(s, keel)).orElse(Solid.EMPTY);
  }

  /**
   * Builds the solids.
   *
   * @throws UnusableBoat when the stations enclose no space or the skeg is not under the keel
   */
  public static HullForm of(HullMeasurements measured) {
    HullForm form = new HullForm(measured);
    if (!(form.outside.volume() > 0) || !(form.inside.volume() > 0)) {
      throw new UnusableBoat(
          "The stations enclose no space. Check that half-breadths and heights grow from keel to"
              + " rail, and that the shell's thickness is in metres.");
    }
    return form;
  }

  /** The outside of the hull, closed by a lid at the rail. */
  public Solid outside() {
    return outside;
  }

  /** The inside of the shell, closed by a lid at the rail. */
  public Solid inside() {
    return inside;
  }

  /**
   * The inside with straight lines from station to station. What the faired lines hold beyond it
   * was not measured.
   */
  public Solid straightInside() {
    return straightInside;
  }

  /**
   * The skeg between its lower edge and the keel line, empty when there is none. It shares no
   * volume with {@link #outside} and displaces water next to it while the boat is dry; swamped, its
   * wood is part of the shell's volume already.
   */
  public Solid skeg() {
    return skeg;
  }

  /**
   * The outside of the thin solid that stands for the shell; subtract {@link #shellInside} from it.
   */
  public Solid shellOutside() {
    return shellOutside;
  }

  public Solid shellInside() {
    return shellInside;
  }

  /**
   * The part of the inside in any box, such as a chamber's. It is one cached solid, so that a boat
   * and its changes share it.
   */
  public Solid chamber(Box box) {
    return insideParts.computeIfAbsent(box, inside::within);
  }

  /**
   * The part of a chamber in a box, cached because every change of a boat asks for the same boxes.
   */
  public Solid chamber(Box chamber, Box box) {
    ChamberCut asked = new ChamberCut(chamber, box);
    Solid before = chamberParts.get(asked);
    if (before != null) {
      return before;
    }
    Solid part = chamber(chamber).within(box);
    if (chamberParts.size() < Slices.MOST) {
      chamberParts.put(asked, part);
    }
    return part;
  }

  /** The volume of the straight inside in a box, m³. */
  public double straightVolume(Box box) {
    return straightVolumes.computeIfAbsent(box, b -> straightInside.within(b).volume());
  }

  /** The part in a box of what the shell encloses with its own thickness. */
  public Solid shellOutside(Box box) {
    return shellOutsideSlices.within(box);
  }

  /** The part in a box of what the shell encloses without it. */
  public Solid shellInside(Box box) {
    return shellInsideSlices.within(box);
  }

  /**
   * The factor on the thin solid that makes its volume hull mass over swamped density. Frames and
   * rails make it exceed one; it is spread over the shell so that it overlaps nothing inside.
   */
  public double shellFactor() {
    double thin = shellOutside.volume() - shellInside.volume();
    return measured.mass() / measured.density() / thin;
  }

  /** The area of bottom, sides and ends, m². */
  public double shellArea() {
    return skin.area();
  }

  /** The centre of the bare hull: as measured, or that of its skin. */
  public Vector3 centre() {
    return measured.centre().orElse(skin.centre());
  }

  /** The length over all, m. */
  public double length() {
    return outside.extent(Vector3.of(1, 0, 0)).length();
  }

  /** The greatest breadth, m. */
  public double beam() {
    return outside.extent(Vector3.of(0, 1, 0)).length();
  }

  /**
   * Every point where the faired rail can flood, without decked lengths; named by side and place.
   */
  public List<FloodPoint> rail() {
    List<FloodPoint> points = new ArrayList<>();
    for (int j = 0; j < sections.size(); j++) {
      Optional<Section> next =
          j + 1 < sections.size() ? Optional.of(sections.get(j + 1)) : Optional.empty();
      railPoints(sections.get(j).portRail(), next.map(Section::portRail), points);
      railPoints(sections.get(j).starboardRail(), next.map(Section::starboardRail), points);
    }
    return points;
  }

  /**
   * Lengths of the boat over which the faired outline crosses itself, although no station's does.
   */
  public List<Span> crossings() {
    return crossings;
  }

  /** The highest point of the rail at the aft end, one a side. */
  public List<Vector3> aftRail() {
    return ends(sections.get(0));
  }

  /** The rail at the forward end, one a side. */
  public List<Vector3> foreRail() {
    return ends(sections.get(sections.size() - 1));
  }

  /** The rail at a place along the boat. */
  public Vector3 railAt(double x, boolean port) {
    for (int j = 1; j < sections.size(); j++) {
      Vector3 aft = railOf(sections.get(j - 1), port);
      Vector3 fore = railOf(sections.get(j), port);
      if (x <= fore.x() || j == sections.size() - 1) {
        double share = (x - aft.x()) / (fore.x() - aft.x());
        return aft.toward(fore, Math.max(0, Math.min(1, share)));
      }
    }
    return railOf(sections.get(0), port);
  }

  private static Vector3 railOf(Section section, boolean port) {
    return port ? section.portRail() : section.starboardRail();
  }

  private static List<Vector3> ends(Section end) {
    return List.of(end.portRail(), end.starboardRail());
  }

  // A deck ends between two sections, and the rail floods from exactly there.
  private void railPoints(Vector3 here, Optional<Vector3> next, List<FloodPoint> points) {
    if (!decked(here.x())) {
      points.add(new FloodPoint("rail, near " + nearestStation(here), here));
    }
    if (next.isEmpty()) {
      return;
    }
    for (Span deck : measured.decked()) {
      for (double edge : List.of(deck.from(), deck.to())) {
        double t = (edge - here.x()) / (next.get().x() - here.x());
        if (t > 0 && t < 1) {
          Vector3 at = here.toward(next.get(), t);
          points.add(new FloodPoint("rail, near " + nearestStation(at), at));
        }
      }
    }
  }

  private boolean decked(double x) {
    return measured.decked().stream().anyMatch(d -> d.from() < x && x < d.to() || touchesEnd(d, x));
  }

  // A deck drawn to the very end of the boat covers the end point too.
  private boolean touchesEnd(Span deck, double x) {
    boolean aftEnd = x == sections.get(0).portRail().x();
    boolean foreEnd = x == sections.get(sections.size() - 1).portRail().x();
    return deck.contains(x) && (aftEnd || foreEnd);
  }

  private String nearestStation(Vector3 point) {
    Station nearest = measured.stations().get(0);
    for (Station s : measured.stations()) {
      double distance = Math.abs(s.portRail().x() - point.x());
      if (distance < Math.abs(nearest.portRail().x() - point.x())) {
        nearest = s;
      }
    }
    return nearest.name();
  }
}
