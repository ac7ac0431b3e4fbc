package thwartwise.crew;

/**
 * The figures by which boats are compared, and nothing else.
 *
 * @param people adults of the design mass
 * @param crew greatest mass of people, whole kg, rounded down; with the kit never above the load
 * @param load greatest mass of people and everything not built in, whole kg, rounded down
 * @param room mass of people that the load leaves after the kit, kg
 */
public record Capacity(int people, double crew, double load, double room) {
  static final Capacity NOTHING = new Capacity(0, 0, 0, 0);

  /** The lesser of this and another answer for the same boat, figure by figure. */
  Capacity notAbove(Capacity other) {
    return new Capacity(
        Math.min(people, other.people),
        Math.min(crew, other.crew),
        Math.min(load, other.load),
        Math.min(room, other.room));
  }

  /** As many people, whatever their mass. */
  public Capacity withAnyCrew() {
    return new Capacity(people, 1, load, room);
  }
}
