package thwartwise.archive;

/** One answer of a walk that is not finished: which question, and what was typed, as typed. */
public record DraftAnswer(String question, String typed) {}
