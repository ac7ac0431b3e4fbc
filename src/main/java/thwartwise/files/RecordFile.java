package thwartwise.files;

import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import thwartwise.record.InspectionRecord;
import thwartwise.record.Printable;
import tools.jackson.databind.node.ObjectNode;

/**
 * One dated inspection as a file, {@code thwartwise/record/1}: the whole boat file and the whole
 * report inside, so that it can be read and worked again without anything else.
 */
public final class RecordFile {
  private static final String REMEDY = "Take the record as it was written.";
  private static final String DATE = "Write it with its offset, as in 2026-05-02T10:15:00+02:00.";

  private RecordFile() {}

  public static InspectionRecord read(Path file) {
    String json = InputFile.text(file, Format.RECORD.noun(), InputFile.RECORD_BYTES);
    return parse(json, file.toString());
  }

  public static InspectionRecord parse(String json, String where) {
    Spot spot = Spot.whole(where);
    Fields fields =
        Fields.of(
            Format.RECORD.checked(JsonText.parse(json, spot), spot),
            spot,
            "format",
            "date",
            "by",
            "programVersion",
            "boat",
            "report");
    return new InspectionRecord(
        date(fields),
        fields.value("by", REMEDY).anyText(),
        fields.value("programVersion", REMEDY).anyText(),
        BoatFields.read(fields.value("boat", REMEDY).node(), spot.in("boat")),
        ReportFields.read(fields.value("report", REMEDY).node(), spot.in("report")));
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

  public static String write(InspectionRecord inspection) {
    ObjectNode node =
        JsonText.object()
            .put("format", Format.RECORD.text())
            .put(
                "date",
                DateTimeFormatter.ISO_OFFSET_DATE_TIME
                    .withLocale(Locale.ROOT)
                    .format(inspection.date()))
            .put("by", inspection.by())
            .put("programVersion", inspection.programVersion());
    node.set("boat", BoatTree.of(inspection.boat()));
    node.set("report", ReportTree.of(inspection.report()));
    return Layout.of(node);
  }
}
