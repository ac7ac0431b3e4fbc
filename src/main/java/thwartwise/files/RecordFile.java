package thwartwise.files;

import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import thwartwise.record.ChainLink;
import thwartwise.record.InspectionRecord;
import thwartwise.record.Printable;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * One dated inspection as a file, {@code thwartwise/record/2}: the whole boat file and the whole
 * report inside, so that it can be read and worked again without anything else; its own hash and
 * that of the record before it, so that a change shows. Version 1 has neither and is read as it is.
 *
 * <p>The text is canonical: keys in a fixed order, one way of laying out, one way of writing
 * numbers.
 */
public final class RecordFile {
  private static final String REMEDY = "Take the record as it was written.";
  private static final String DATE = "Write it with its offset, as in 2026-05-02T10:15:00+02:00.";
  private static final List<String> KEYS =
      List.of("format", "date", "by", "programVersion", "boat", "report");

  private RecordFile() {}

  /**
   * What a file holds.
   *
   * @param link its place in the chain; records of version 1 have none
   */
  record Content(Optional<ChainLink> link, InspectionRecord inspection) {}

  public static InspectionRecord read(Path file) {
    String json = InputFile.text(file, Format.RECORD.noun(), InputFile.RECORD_BYTES);
    return parse(json, file.toString());
  }

  public static InspectionRecord parse(String json, String where) {
    return content(json, Spot.whole(where)).inspection();
  }

  static Content content(String json, Spot spot) {
    JsonNode tree = Format.RECORD.checked(JsonText.parse(json, spot), spot);
    boolean chained = Format.RECORD.version(tree) > 1;
    Fields fields = Fields.free(tree, spot).allow(keys(chained));
    InspectionRecord inspection =
        new InspectionRecord(
            date(fields),
            fields.value("by", REMEDY).anyText(),
            fields.value("programVersion", REMEDY).anyText(),
            BoatFields.read(fields.value("boat", REMEDY).node(), spot.in("boat")),
            ReportFields.read(fields.value("report", REMEDY).node(), spot.in("report")));
    return new Content(
        chained ? Optional.of(LinkFields.read(fields)) : Optional.empty(), inspection);
  }

  private static List<String> keys(boolean chained) {
    List<String> keys = new ArrayList<>(KEYS);
    if (chained) {
      keys.addAll(LinkFields.KEYS);
    }
    return keys;
  }

  private static OffsetDateTime date(Fields fields) {
    String typed = fields.text("date", DATE);
    try {
      return OffsetDateTime.parse(typed);
    } catch (DateTimeException e) {
      throw fields
          .spot()
          .fault("\"date\" is %s, which is not a moment. %s", Printable.quoted(typed), DATE);
    }
  }

  /** A record that stands alone, first of its chain. */
  public static String write(InspectionRecord inspection) {
    return write(inspection, ChainLink.FIRST);
  }

  public static String write(InspectionRecord inspection, ChainLink link) {
    ObjectNode node = JsonText.object().put("format", Format.RECORD.text());
    LinkFields.write(node, link);
    node.put(
            "date",
            DateTimeFormatter.ISO_OFFSET_DATE_TIME
                .withLocale(Locale.ROOT)
                .format(inspection.date()))
        .put("by", inspection.by())
        .put("programVersion", inspection.programVersion());
    node.set("boat", BoatTree.of(inspection.boat()));
    node.set("report", ReportTree.of(inspection.report()));
    return SealedText.seal(Layout.of(PlainNumbers.in(node)));
  }
}
