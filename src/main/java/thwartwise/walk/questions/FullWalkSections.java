package thwartwise.walk.questions;

import java.util.List;
import thwartwise.walk.engine.WalkSection;

/** The sections of the walk of a whole boat. */
public final class FullWalkSections {
  public static final WalkSection BOAT = new WalkSection("the boat", 9);
  public static final WalkSection SHAPE = new WalkSection("the shape of the hull", 40);
  public static final WalkSection WEIGHT = new WalkSection("weight, floor and decks", 6);
  public static final WalkSection OPENINGS = new WalkSection("openings", 9);
  public static final WalkSection CHAMBERS = new WalkSection("chambers and foam", 25);
  public static final WalkSection PLACES = new WalkSection("places to sit", 20);
  public static final WalkSection KIT = new WalkSection("kit", 25);
  public static final WalkSection PEOPLE = new WalkSection("people and waters", 9);

  public static final List<WalkSection> ALL =
      List.of(BOAT, SHAPE, WEIGHT, CHAMBERS, OPENINGS, PLACES, KIT, PEOPLE);

  private FullWalkSections() {}
}
