package thwartwise.hull;

/** Measurements that no boat can have: one line for a person, with the place and the remedy. */
public final class UnusableBoat extends RuntimeException {
  private static final long serialVersionUID = 1L;

  public UnusableBoat(String message) {
    super(message);
  }
}
