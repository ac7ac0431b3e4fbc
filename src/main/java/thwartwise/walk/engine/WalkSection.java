package thwartwise.walk.engine;

/**
 * A part of a walk, as a person sees it.
 *
 * @param name its subject, in a word or two
 * @param questions the number of questions in most boats
 */
public record WalkSection(String name, int questions) {

  /**
   * The position of a question in the walk.
   *
   * @param section its section
   * @param number of the section, counted from one
   * @param of number of sections
   * @param remaining the values still to give in a typical boat, this one included; a row holds
   *     several
   */
  public record WalkPosition(String section, int number, int of, int remaining) {
    private static final int FEW = 5;
    private static final int MANY = 20;

    /** The position in one line. */
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
