package thwartwise.archive;

import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalInt;
import thwartwise.json.Format;
import thwartwise.json.InputFile;
import thwartwise.json.Location;
import thwartwise.json.UnusableInput;
import thwartwise.record.Chain.StoredRecord;
import thwartwise.record.ChainLink;
import thwartwise.record.InspectionRecord;
import thwartwise.record.RecordEntry;

/** A record file in its folder, and the inspection in it when it can be read. */
record StoredInspection(StoredRecord stored, Optional<InspectionRecord> inspection) {
  static final String ENDING = ".json";

  static StoredInspection of(Path file) {
    String name = file.getFileName().toString();
    try {
      return read(file, name);
    } catch (UnusableInput unusable) {
      return unreadable(name, new SealedText("", Optional.empty()), unusable);
    }
  }

  private static StoredInspection read(Path file, String name) {
    byte[] bytes = InputFile.bytes(file, Format.RECORD.noun(), InputFile.RECORD_BYTES);
    return of(name, bytes, Location.whole(file.toString()));
  }

  static StoredInspection of(String name, byte[] bytes, Location spot) {
    SealedText sealed = SealedText.of(bytes);
    try {
      String json = InputFile.text(bytes, Format.RECORD.noun(), spot);
      return readable(name, sealed, RecordFile.content(json, spot));
    } catch (UnusableInput unusable) {
      return unreadable(name, sealed, unusable);
    }
  }

  private static StoredInspection readable(
      String name, SealedText sealed, RecordFile.Content content) {
    return new StoredInspection(
        new StoredRecord(
            name,
            sealed.hash(),
            sealed.stated(),
            content.link(),
            Optional.of(content.inspection().boat().name()),
            Optional.empty()),
        Optional.of(content.inspection()));
  }

  private static StoredInspection unreadable(String name, SealedText sealed, UnusableInput why) {
    return new StoredInspection(
        new StoredRecord(
            name,
            sealed.hash(),
            sealed.stated(),
            Optional.empty(),
            Optional.empty(),
            Optional.of(why.getMessage())),
        Optional.empty());
  }

  /**
   * The record with its place; empty when it cannot be read.
   *
   * @param folder name of the folder it lies in; blank for a single file
   */
  Optional<RecordEntry> entry(String folder, OptionalInt number) {
    String name = bare(stored.file());
    String called = number.isPresent() ? Integer.toString(number.getAsInt()) : name;
    return inspection.map(
        read ->
            new RecordEntry(
                folder.isEmpty() ? name : folder + "/" + called,
                name,
                number,
                stored.hash(),
                // A record of a newer format without the line of its hash was changed too.
                stored.hasMatchingHash()
                    && stored.link().isPresent() == stored.stated().isPresent(),
                stored.link().isPresent(),
                stored.link().flatMap(ChainLink::papers).isPresent(),
                stored.link().flatMap(ChainLink::corrects),
                read));
  }

  static String bare(String file) {
    return file.endsWith(ENDING) ? file.substring(0, file.length() - ENDING.length()) : file;
  }
}
