package thwartwise.walk.borrowed;

import java.util.List;
import thwartwise.walk.engine.WalkSection;

/** The sections of the walk of a borrowed boat. */
final class BorrowedSections {
  static final WalkSection BOAT = new WalkSection("the boat", 2);
  static final WalkSection HULL = new WalkSection("the hull", 9);
  static final WalkSection SEATS = new WalkSection("seats and kit", 6);
  static final WalkSection PEOPLE = new WalkSection("people", 1);
  static final WalkSection PROOF = new WalkSection("what holds it up full of water", 2);
  static final WalkSection WATERS = new WalkSection("waters", 2);

  static final List<WalkSection> ALL = List.of(BOAT, HULL, SEATS, PEOPLE, PROOF, WATERS);

  private BorrowedSections() {}
}
