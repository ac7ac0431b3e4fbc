package thwartwise.rules;

/**
 * A formula as one rule set states it.
 *
 * @param title how it is called there; blank for the formula's own title
 * @param takesPart false for a line the set wants shown and not obeyed
 */
public record SetFormula(
    Formula formula,
    String title,
    Parameters parameters,
    boolean takesPart,
    Basis basis,
    String source) {

  String cited() {
    return source + " (" + basis.word() + ")";
  }
}
