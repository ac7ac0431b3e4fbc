package thwartwise.walk;

/** The text before question one. It helps even if no question is ever answered. */
final class Introduction {
  static final String TEXT =
      """
      If you do nothing else: everybody wears a life jacket, weigh everybody and
      everything, and never take more aboard than the latest record says.
      Print "sheet" first and fill it in at the boat: tape, long line, spirit level,
      scales, litre jug. What was not measured or tested counts for nothing; "about
      20" is a guess. Every answer is kept: stop at any time. These always work:
      back, list, change 12, why, show, skip, stop; help start describes a trial.""";

  /** The text of {@code help start}. */
  static final String REST =
      """
      A trial on the bank needs no program. In calm, knee-deep water, jackets on,
      somebody standing by: load the boat to the limit and look how much rail is
      left. Then everyone to one side, slowly. Then swamp it, and see whether
      it stays level and holds everybody's head clear of the water.

      A borrowed boat counts as holding nobody up when full of water, until a leak
      test of a chamber is shown or a trial was seen. Ten minutes on the bank tell
      more: swamp it in knee-deep water, jackets on, with the crew sitting in it, and
      look whether it stays level with every head clear. Enter the result where the
      walk asks what shows it, or at "today".

      back: the last question again. list: the answers so far; list kit: what is
      carried, a row each. change 12: answer number 12 again; again kit 2: a row.
      why: how to measure this, and what for. show: a sketch, where there is one.
      skip: leave it out, where that is possible. stop: keep it all and leave. Where
      several figures are asked in a row, type them at once with ; between them.
      For a thing equal to another: same, or same as 3; its position is asked.""";

  private Introduction() {}
}
