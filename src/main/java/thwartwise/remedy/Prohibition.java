package thwartwise.remedy;

/** What must never be done to a boat. */
public sealed interface Prohibition {

  /** Never to seal a space that is vented for what it holds. */
  record SealVented(String chamber, String kit) implements Prohibition {}

  /** As it was written in a record. */
  record AsRecorded(String words) implements Prohibition {}
}
