package thwartwise.advice;

import java.util.concurrent.atomic.AtomicInteger;

/**
 * Hears how far an inspection is. It is told from several threads at once and can change nothing:
 * an inspection comes to the same answer whoever listens.
 */
public interface Progress {
  Progress UNHEARD = (stage, done, of) -> {};

  /** What an inspection does one after the other. */
  enum Stage {
    /** How many people and how much weight it carries. */
    CREW,
    /** A quick look at every change that could be made to the boat. */
    CHANGES,
    /** What the most promising changes buy. */
    GAINS,
    /** What the changes that are reported make worse. */
    COSTS,
    /** Every measurement moved by its spread. */
    SPREAD
  }

  /**
   * @param done steps of the stage that are over
   * @param of steps it has in all
   */
  void at(Stage stage, int done, int of);

  /** Says that a stage begins; what it gives back is run at the end of each step. */
  default Runnable counting(Stage stage, int of) {
    AtomicInteger done = new AtomicInteger();
    at(stage, 0, of);
    return () -> at(stage, done.incrementAndGet(), of);
  }
}
