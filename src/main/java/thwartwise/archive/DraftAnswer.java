package thwartwise.archive;

/** One answer of an unfinished walk: its question, and the text as typed. */
public record DraftAnswer(String question, String typed) {}
