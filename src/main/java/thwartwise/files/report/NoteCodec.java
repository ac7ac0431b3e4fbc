package thwartwise.files.report;

import thwartwise.checks.Note;
import thwartwise.json.ObjectReader;
import thwartwise.json.RecordCodec;
import thwartwise.measure.UnitFormat;
import thwartwise.report.NoteWords;
import tools.jackson.databind.node.ObjectNode;

/** A note: its words, and next to them its identity. Older reports have the words alone. */
final class NoteCodec {
  private static final String WORDS = "note";
  private static final String IDENTITY = "noteIs";

  private NoteCodec() {}

  static ObjectNode put(ObjectNode node, Note note, UnitFormat units) {
    node.put(WORDS, NoteWords.of(note, units));
    if (!(note instanceof Note.Stated) && !note.isNone()) {
      node.set(IDENTITY, RecordCodec.write((Record) note));
    }
    return node;
  }

  static Note read(ObjectReader holder) {
    String words = ReportValues.text(holder, WORDS);
    return RecordCodec.read(holder, IDENTITY, Note.class, () -> Note.stated(words));
  }
}
