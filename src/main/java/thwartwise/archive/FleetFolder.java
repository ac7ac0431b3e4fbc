package thwartwise.archive;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import thwartwise.boat.Boat;
import thwartwise.files.boat.BoatFile;
import thwartwise.json.Format;
import thwartwise.json.InputFile;
import thwartwise.json.JsonText;
import thwartwise.json.Location;
import thwartwise.json.UnusableInput;
import thwartwise.record.BoatRecords;
import thwartwise.record.FleetRow;
import thwartwise.record.InspectionRecord;
import thwartwise.record.RecordEntry;

/**
 * The boats of a group: a folder of ours with boats and records, or any folder with boat files and
 * records. An unusable file becomes a row of the table and stops nothing.
 */
public final class FleetFolder {
  private static final String FILES = "[!.]*.json";

  private final LocalDate today;
  private final List<FleetRow> rows = new ArrayList<>();
  private final Map<String, List<Boat>> boats = new TreeMap<>();
  private final Map<String, InspectionRecord> last = new TreeMap<>();
  private final List<String> broken = new ArrayList<>();

  private FleetFolder(LocalDate today) {
    this.today = today;
  }

  /**
   * One row for each boat, by name, then one for each unusable file.
   *
   * @throws UnusableInput when there is no such folder, or nothing of ours in it
   */
  public static List<FleetRow> rows(Path folder, LocalDate today) {
    if (!Files.isDirectory(folder)) {
      throw Location.whole(folder.toString())
          .fault("there is no such folder. Name the folder that holds the boats.");
    }
    FleetFolder fleet = new FleetFolder(today);
    Listing.of(folder, FILES).forEach(fleet::loose);
    Listing.of(folder.resolve("boats"), FILES).forEach(fleet::boat);
    new RecordArchive(folder.resolve("records")).boats().forEach(fleet::records);
    return fleet.joined(folder);
  }

  /** A single file says in its format what it is. */
  private void loose(Path file) {
    tried(
        file,
        () -> {
          Location spot = Location.whole(file.toString());
          String json = InputFile.text(file, "a boat file or a record", InputFile.RECORD_BYTES);
          String format = JsonText.parse(json, spot).path("format").asString("");
          if (Format.RECORD.names(format)) {
            record(RecordFile.content(json, spot).inspection());
          } else {
            add(BoatFile.parse(json, file.toString()));
          }
        });
  }

  private void boat(Path file) {
    tried(file, () -> add(BoatFile.read(file)));
  }

  private void tried(Path file, Runnable reading) {
    try {
      reading.run();
    } catch (UnusableInput unusable) {
      rows.add(row(file, unusable));
    }
  }

  /** The fault without the name of the file, which the row has already. */
  private static FleetRow row(Path file, UnusableInput unusable) {
    String start = file + ": ";
    String message = unusable.getMessage();
    return new FleetRow.OfFile(
        file.getFileName().toString(),
        message.startsWith(start) ? message.substring(start.length()) : message);
  }

  private void add(Boat boat) {
    boats.computeIfAbsent(Slug.of(boat.name()), name -> new ArrayList<>()).add(boat);
  }

  private void record(InspectionRecord inspection) {
    last.merge(Slug.of(inspection.boat().name()), inspection, FleetFolder::later);
  }

  private static InspectionRecord later(InspectionRecord a, InspectionRecord b) {
    return b.date().isBefore(a.date()) ? a : b;
  }

  private void records(BoatRecords records) {
    records.unreadable().forEach(why -> rows.add(new FleetRow.OfFile(records.folder(), why)));
    records.last().map(RecordEntry::inspection).ifPresent(newest -> record(newest));
    if (!records.faults().isEmpty()) {
      broken.add(records.folder());
    }
    if (records.entries().isEmpty() && records.unreadable().isEmpty()) {
      // The faults become rows, because nothing else is left of the boat.
      records.faults().forEach(why -> rows.add(new FleetRow.OfFile(records.folder(), why)));
    }
  }

  private List<FleetRow> joined(Path folder) {
    List<FleetRow> all = new ArrayList<>();
    boats.forEach((key, files) -> files.forEach(boat -> all.add(row(key, boat))));
    last.forEach(
        (key, record) -> {
          if (!boats.containsKey(key)) {
            all.add(row(key, record.boat()));
          }
        });
    all.sort(Comparator.comparing(row -> row.name().toLowerCase(Locale.ROOT)));
    all.addAll(rows);
    if (all.isEmpty()) {
      throw Location.whole(folder.toString())
          .fault("there are no boats and no records here. Name the folder that holds them.");
    }
    return all;
  }

  private FleetRow row(String key, Boat boat) {
    Optional<InspectionRecord> record = Optional.ofNullable(last.get(key));
    // Compares texts, because figures may differ in digits that no file shows.
    boolean changed =
        record.map(r -> !BoatFile.write(r.boat()).equals(BoatFile.write(boat))).orElse(false);
    return FleetRow.of(boat, record, changed, broken.contains(key), today);
  }
}
