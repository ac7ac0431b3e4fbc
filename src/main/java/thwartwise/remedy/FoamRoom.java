package thwartwise.remedy;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import thwartwise.boat.BoatModel;
import thwartwise.boat.Kit;
import thwartwise.boat.Place;
import thwartwise.geometry.Box;
import thwartwise.geometry.Span;
import thwartwise.geometry.Vector3;
import thwartwise.hull.HullForm;
import thwartwise.remedy.Deed.FoamBlock;

/**
 * The room for blocks of foam in a boat: next to what is there, and not where people sit. All
 * distances are judgement, in metres.
 */
final class FoamRoom {
  /** Half of a seat along the boat. */
  private static final double HALF_SEAT = 0.14;

  /** The thickness of a seat, and what stays free under the rail. */
  private static final double CLEAR = 0.03;

  /** The longest block along the sides, so that it fits a curved side closely. */
  private static final double PIECE = 0.8;

  private static final double HIGH = 0.18;

  /** The distance from the middle of a person to the shoulder. */
  private static final double SHOULDER = 0.15;

  /**
   * The distance of foam in the ends from the nearest seat, for the knees, and its greatest length.
   */
  private static final double KNEES = 0.45;

  private static final double LONGEST_END = 0.6;

  /** Thinner or shorter than this is no block. */
  private static final double LEAST = 0.06;

  /** Smaller than this is no block, m³. */
  private static final double LEAST_VOLUME = 0.002;

  private final BoatModel model;
  private final HullForm form;
  private final Span length;
  private final double floor;

  FoamRoom(BoatModel model) {
    this.model = model;
    this.form = model.form();
    this.length = form.outside().extent(Vector3.of(1, 0, 0));
    this.floor = model.boat().hull().floor();
  }

  /** Blocks under a seat that has no chamber beneath it. */
  List<FoamBlock> under(Place place) {
    if (!(place.z() - CLEAR > floor + LEAST)) {
      return List.of();
    }
    Vector3 middle = Vector3.of(place.x(), place.usualY(), (floor + place.z()) / 2);
    boolean taken = model.spaces().stream().anyMatch(s -> s.box().contains(middle));
    Span along = new Span(place.along().from() - HALF_SEAT, place.along().to() + HALF_SEAT);
    Span height = new Span(floor, place.z() - CLEAR);
    return taken ? List.of() : block(new Box(along, under(place.across()), height), false);
  }

  /**
   * A block from side to side under a thwart; under a bench along one side no broader than the
   * bench.
   */
  private static Span under(Span across) {
    if (across.contains(0)) {
      return Span.ALL;
    }
    return across.from() > 0
        ? new Span(across.from() - SHOULDER, Double.POSITIVE_INFINITY)
        : new Span(Double.NEGATIVE_INFINITY, across.to() + SHOULDER);
  }

  List<FoamBlock> bow() {
    double seat =
        model.boat().places().stream().mapToDouble(p -> p.along().to()).max().orElse(length.from());
    double from = Math.max(seat + KNEES, length.to() - LONGEST_END);
    return end(from, length.to());
  }

  List<FoamBlock> stern() {
    double seat =
        model.boat().places().stream().mapToDouble(p -> p.along().from()).min().orElse(length.to());
    double to = Math.min(seat - HALF_SEAT, length.from() + LONGEST_END);
    return end(length.from(), to);
  }

  private List<FoamBlock> end(double from, double to) {
    if (!(to - from >= LEAST)) {
      return List.of();
    }
    double top = Math.min(rail(from).z(), rail(to).z()) - CLEAR;
    return block(new Box(new Span(from, to), Span.ALL, new Span(floor, top)), false);
  }

  /** Along both sides from the floor up. */
  List<FoamBlock> sides() {
    return sides(Double.POSITIVE_INFINITY);
  }

  /** Along both sides, only just under the rail. */
  List<FoamBlock> highSides() {
    return sides(HIGH);
  }

  private List<FoamBlock> sides(double height) {
    List<FoamBlock> blocks = new ArrayList<>();
    int pieces = (int) Math.ceil(length.length() / PIECE);
    for (int i = 0; i < pieces; i++) {
      Span along =
          new Span(
              length.from() + length.length() * i / pieces,
              length.from() + length.length() * (i + 1) / pieces);
      blocks.addAll(side(along, height));
    }
    return blocks;
  }

  private List<FoamBlock> side(Span along, double height) {
    double rail = Math.min(rail(along.from()).z(), rail(along.to()).z()) - CLEAR;
    double half = Math.min(rail(along.from()).y(), rail(along.to()).y());
    double inner = half - FoamBlock.THICK;
    double top = Math.min(rail, elbows(along, inner));
    double foot = Math.max(floor, rail - height);
    if (!(inner > LEAST) || !(top - foot > LEAST)) {
      return List.of();
    }
    Span outward = new Span(inner, Double.POSITIVE_INFINITY);
    return block(new Box(along, outward, new Span(foot, top)), true);
  }

  /** Below the seat where somebody sits so far outboard that foam would push them in. */
  private double elbows(Span along, double inner) {
    return model.boat().places().stream()
        .filter(p -> p.along().to() > along.from() - SHOULDER)
        .filter(p -> p.along().from() < along.to() + SHOULDER)
        .filter(p -> Math.max(p.across().to(), -p.across().from()) + SHOULDER > inner)
        .mapToDouble(p -> p.z() - CLEAR)
        .min()
        .orElse(Double.POSITIVE_INFINITY);
  }

  /** The lower rail and the nearer side. */
  private Vector3 rail(double x) {
    Vector3 port = form.railAt(x, true);
    Vector3 starboard = form.railAt(x, false);
    double half = Math.min(port.y(), -starboard.y());
    return Vector3.of(x, half, Math.min(port.z(), starboard.z()));
  }

  /** The largest part of a box that no chamber takes up; none if kit stands in it. */
  private List<FoamBlock> block(Box wanted, boolean mirrored) {
    List<Box> left = List.of(wanted);
    for (var space : model.spaces()) {
      left = without(left, space.box());
    }
    Optional<Box> largest =
        left.stream()
            .filter(b -> b.x().length() > LEAST && b.z().length() > LEAST)
            .max(Comparator.comparingDouble(this::volume));
    return largest
        .filter(b -> volume(b) > LEAST_VOLUME)
        .filter(b -> model.boat().kit().stream().noneMatch(k -> meets(k, b, mirrored)))
        .map(b -> List.of(new FoamBlock(b, mirrored)))
        .orElse(List.of());
  }

  private static boolean meets(Kit kit, Box box, boolean mirrored) {
    return KitMoving.meets(kit, box) || mirrored && KitMoving.meets(kit, box.mirrored());
  }

  private static List<Box> without(List<Box> boxes, Box taken) {
    return boxes.stream().flatMap(b -> b.without(taken).stream()).toList();
  }

  private double volume(Box box) {
    return form.inside().within(box).volume();
  }
}
