package thwartwise.boat;

import thwartwise.boat.Filling.SealTest;

/**
 * Why a chamber counts when the boat is swamped, or does not. Litres and minutes are those of a
 * leak test, m³ otherwise; dates as in ISO 8601. Records store the names of these types and of
 * their components, so they are never renamed.
 */
public sealed interface BuoyancyReason {

  /** Foam that is not known to be closed-cell soaks. */
  record SoakingFoam() implements BuoyancyReason {}

  /** Foam that is not fastened floats away. */
  record LooseFoam() implements BuoyancyReason {}

  /** Fastened closed-cell foam, and the share of it that counts. */
  record FastenedFoam(double share) implements BuoyancyReason {}

  record OpenChamber() implements BuoyancyReason {}

  /** Claimed to be tight, without a leak test. */
  record OnlyClaimed() implements BuoyancyReason {}

  /** Called proven, without a leak test. */
  record NoLeakTest() implements BuoyancyReason {}

  record FutureLeakTest(String date) implements BuoyancyReason {}

  record StaleLeakTest(String date) implements BuoyancyReason {}

  record ShortLeakTest(double leastMinutes) implements BuoyancyReason {}

  record FailedLeakTest(double litresIn, double mostLitres) implements BuoyancyReason {}

  /**
   * A leak test that counts.
   *
   * @param bothSides whether the one test stands for both of two twins
   */
  record ProvenTight(String date, String by, boolean bothSides) implements BuoyancyReason {
    static ProvenTight by(SealTest test, boolean bothSides) {
      return new ProvenTight(test.date().toString(), test.by(), bothSides);
    }
  }

  /** Repaired, cut or fitted with something after its test, or on the same day. */
  record RepairedSinceTest(String repaired, String tested) implements BuoyancyReason {}

  /**
   * A leak test that counts let some water in, so only what is left after a time counts.
   *
   * @param reason why it counts at all
   * @param halfGoneMinutes after which half its lift is gone in a swamped boat
   * @param heldUpMinutes for which people must be held up
   * @param left the share of its volume that is left then
   */
  record TakesWater(
      BuoyancyReason reason,
      double litresIn,
      double minutes,
      double halfGoneMinutes,
      double heldUpMinutes,
      double left)
      implements BuoyancyReason {}

  /**
   * A leak test that let water in, of which nobody said how high the water stood.
   *
   * @param reason why the rest counts
   * @param head that was taken, m
   */
  record AssumedHead(BuoyancyReason reason, double head) implements BuoyancyReason {}

  /**
   * It holds a battery or charger, so it is vented and never sealed.
   *
   * @param volume of air that would count without it, sealed and proven
   */
  record HoldsVentedKit(String kit, double volume) implements BuoyancyReason {}

  /** An opening that nothing closes leads into it. */
  record HasOpening(String opening) implements BuoyancyReason {}

  /**
   * Loose kit takes up some of its volume.
   *
   * @param reason why the rest counts or does not
   */
  record LooseStowage(BuoyancyReason reason, double volume) implements BuoyancyReason {}

  /** Words, in older records. */
  record Stated(String words) implements BuoyancyReason {}
}
