package thwartwise.advice;

import java.util.concurrent.atomic.AtomicInteger;

/**
 * Receives the progress of an inspection. Several threads call it at once, and it can change
 * nothing: an inspection has the same answer whoever listens.
 */
public interface Progress {
  Progress UNHEARD = (stage, done, of) -> {};

  /** The stages of an inspection, one after the other. */
  enum Stage {
    /** How many people and how much weight it carries. */
    CREW,
    /** A quick look at every change that could be made to the boat. */
    CHANGES,
    /** The gains of the most promising changes. */
    GAINS,
    /** The costs of the changes that are reported. */
    COSTS,
    /** Every measurement moved by its spread. */
    SPREAD
  }

  /**
   * @param done finished steps of the stage
   * @param of steps it has in all
   */
  void at(Stage stage, int done, int of);

  /**
   * Receives the number of adults that a judged boat carries surely enough, before it is known how
   * heavy they may be; it stays what it is.
   */
  default void carries(int adults) {}

  /** Begins a stage; the result is run at the end of each step. */
  default Runnable counting(Stage stage, int of) {
    AtomicInteger done = new AtomicInteger();
    at(stage, 0, of);
    return () -> at(stage, done.incrementAndGet(), of);
  }
}
