package thwartwise.boat;

/**
 * Wind by its Beaufort force: the speeds in m/s are the upper edges of a published Beaufort table
 * at 10 m height (READ); force 12 has none and stands for its lower edge. The descriptions are from
 * memory, in our words, for inland and sheltered water.
 */
public enum Beaufort {
  F0(0.2, "smoke goes straight up, the water is a mirror"),
  F1(1.5, "smoke drifts, ripples without crests"),
  F2(3.3, "leaves rustle, small wavelets"),
  F3(5.4, "a light flag stands out, here and there a crest breaks"),
  F4(7.9, "dust and paper fly, white caps on many crests"),
  F5(10.7, "small trees sway, white caps everywhere"),
  F6(13.8, "wires whistle, foam and spray"),
  F7(17.1, "hard to walk against"),
  F8(20.7, "twigs break off"),
  F9(24.4, "tiles come down"),
  F10(28.4, "trees are uprooted"),
  F11(32.6, "widespread damage"),
  F12(32.7, "everything gives way");

  private final double most;
  private final String looks;

  Beaufort(double most, String looks) {
    this.most = most;
    this.looks = looks;
  }

  /**
   * The force of a speed. A speed between two printed edges, or that is no number, counts as the
   * higher force.
   */
  public static Beaufort of(double speed) {
    for (Beaufort force : values()) {
      if (speed <= force.most) {
        return force;
      }
    }
    return F12;
  }

  public int force() {
    return ordinal();
  }

  /** The upper edge, m/s. */
  public double most() {
    return most;
  }

  public String looks() {
    return looks;
  }
}
