package thwartwise.boat;

import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;

/**
 * The answer to a point of a checklist about this boat. It carries all its consequences, so that it
 * stays valid when the checklist is gone or changed.
 *
 * @param point the identity of the point, the same in every edition of its list
 * @param system the list the point is from
 * @param item the name of the chamber, opening or piece of kit it is about; blank for the boat
 * @param requirement in words
 * @param fact what a fault means for the boat
 * @param repeatAfterDays days after which it is asked again; zero for never
 * @param note remark of the person who looked; may be blank
 * @param mark of the thing at that time
 */
public record PointAnswer(
    String point,
    String system,
    String item,
    String requirement,
    PointCondition condition,
    PointGravity gravity,
    Optional<BoatFact> fact,
    int repeatAfterDays,
    String note,
    String by,
    LocalDate date,
    String mark) {

  public boolean isFault() {
    return condition == PointCondition.NOT_AS_IT_SHOULD_BE;
  }

  /** Whether something must be done about it before anybody goes. */
  public boolean isGrave() {
    return isFault() && gravity != PointGravity.ADVICE;
  }

  public boolean holdsTheLaunch() {
    return isFault() && gravity == PointGravity.HOLDS_THE_LAUNCH;
  }

  boolean sets(BoatFact wanted) {
    return isFault() && fact.equals(Optional.of(wanted));
  }

  /** Whether it answers the same point about the same thing. */
  public boolean isOf(String otherPoint, String otherThing) {
    return point.equals(otherPoint) && item.equals(otherThing);
  }

  /**
   * Whether it has to be asked again: not looked at, too long ago, dated in the future, or about
   * something that has changed. A fault stays until somebody looks again.
   */
  public boolean isDue(Boat boat, LocalDate today) {
    return switch (condition) {
      case NOT_AS_IT_SHOULD_BE -> false;
      case NOT_LOOKED_AT -> true;
      case AS_IT_SHOULD_BE, DOES_NOT_APPLY ->
          repeatAfterDays > 0 && !today.isBefore(date.plusDays(repeatAfterDays))
              || date.isAfter(today)
              || !mark.equals(mark(boat, item));
    };
  }

  /** The requirement with the name of the thing. */
  public String requirementOfItem() {
    return item.isBlank() ? requirement : requirement + " (" + item + ")";
  }

  /** Its subject: the thing by its name, or the system it belongs to. */
  public String itemOrSystem() {
    return item.isBlank()
        ? system.substring(0, 1).toLowerCase(Locale.ROOT) + system.substring(1)
        : item;
  }

  /** A mark that is equal for equal measurements of the thing; blank for the boat as a whole. */
  public static String mark(Boat boat, String thing) {
    return thing.isBlank() ? "" : ItemFingerprint.of(boat, thing);
  }

  /** The condition found at a point of a checklist. */
  public enum PointCondition {
    AS_IT_SHOULD_BE("as it should be"),
    NOT_AS_IT_SHOULD_BE("not as it should be"),
    NOT_LOOKED_AT("not looked at"),
    DOES_NOT_APPLY("does not apply");

    private final String word;

    PointCondition(String word) {
      this.word = word;
    }

    public String word() {
      return word;
    }
  }

  /** The gravity of a fault at a point. */
  public enum PointGravity {
    HOLDS_THE_LAUNCH("holds the launch"),
    PUT_RIGHT_FIRST("put right first"),
    ADVICE("advice");

    private final String word;

    PointGravity(String word) {
      this.word = word;
    }

    public String word() {
      return word;
    }
  }
}
