package thwartwise.walk.engine;

/**
 * A part of a walk, as a person sees it.
 *
 * @param name of what is asked there, in a word or two
 * @param questions how many there are in most boats
 */
public record WalkSection(String name, int questions) {

  /**
   * Where a question stands in the walk.
   *
   * @param section what is asked there
   * @param number of the section, from one
   * @param of how many sections
   * @param remaining how many values there are still to give, this one included, in a boat like
   *     most; a row holds several
   */
  public record WalkPosition(String section, int number, int of, int remaining) {
    private static final int FEW = 5;
    private static final int MANY = 20;

    /** One line. */
    public String words() {
      return "Section %d of %d, %s, %s left.".formatted(number, of, section, about());
    }

    private String about() {
      if (remaining < FEW) {
        return "a few values";
      }
      int step = remaining > MANY ? 10 : FEW;
      return "about " + Math.round((double) remaining / step) * step + " values";
    }
  }
}
