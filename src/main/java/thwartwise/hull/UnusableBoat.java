package thwartwise.hull;

/** Measurements that cannot be of a boat: one line for a person, with the place and the remedy. */
public final class UnusableBoat extends RuntimeException {
  private static final long serialVersionUID = 1L;

  public UnusableBoat(String message) {
    super(message);
  }
}
