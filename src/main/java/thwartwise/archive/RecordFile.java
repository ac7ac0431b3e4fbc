package thwartwise.archive;

import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import thwartwise.files.boat.BoatCodec;
import thwartwise.files.report.ReportCodec;
import thwartwise.json.CanonicalNumbers;
import thwartwise.json.Format;
import thwartwise.json.InputFile;
import thwartwise.json.JsonText;
import thwartwise.json.Layout;
import thwartwise.json.Location;
import thwartwise.json.ObjectReader;
import thwartwise.measure.PrintableText;
import thwartwise.measure.UnitFormat;
import thwartwise.measured.BoatQuantity;
import thwartwise.record.ChainLink;
import thwartwise.record.ChainLink.PaperHash;
import thwartwise.record.InspectionRecord;
import thwartwise.record.InspectionRecord.Correction;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * One dated inspection as a file, {@code thwartwise/record/3}. It holds the whole boat file and the
 * whole report, so that it can be read and computed again by itself, and three kinds of hash, so
 * that a change shows: its own, that of the record before it and those of its pages. Version 2 has
 * no hashes of pages, version 1 has no hash at all; both are read for ever.
 *
 * <p>The text is canonical: keys in a fixed order, one layout, one notation for numbers.
 */
public final class RecordFile {
  private static final String REMEDY = "Take the record as it was written.";
  private static final String DATE = "Write it with its offset, as in 2026-05-02T10:15:00+02:00.";

  /** The version since which a record has a place in a chain. */
  private static final int CHAINED = 2;

  /** The version since which a record holds the hashes of its pages. */
  private static final int VOUCHING = 3;

  private static final List<String> KEYS =
      List.of("format", "date", "by", "programVersion", "boat", "report");

  private RecordFile() {}

  /**
   * The content of a file.
   *
   * @param link its place in the chain; records of version 1 have none
   */
  record Content(Optional<ChainLink> link, InspectionRecord inspection) {}

  public static InspectionRecord read(Path file) {
    String json = InputFile.text(file, Format.RECORD.noun(), InputFile.RECORD_BYTES);
    return parse(json, file.toString());
  }

  public static InspectionRecord parse(String json, String where) {
    return content(json, Location.whole(where)).inspection();
  }

  static Content content(String json, Location spot) {
    JsonNode tree = Format.RECORD.checked(JsonText.parse(json, spot), spot);
    int version = Format.RECORD.version(tree);
    ObjectReader fields = ObjectReader.free(tree, spot).allow(keys(version));
    InspectionRecord inspection =
        new InspectionRecord(
            date(fields),
            fields.value("by", REMEDY).anyText(),
            fields.value("programVersion", REMEDY).anyText(),
            BoatCodec.read(fields.value("boat", REMEDY).node(), spot.in("boat")),
            ReportCodec.read(fields.value("report", REMEDY).node(), spot.in("report")));
    return new Content(
        version >= CHAINED
            ? Optional.of(LinkFields.read(fields, version >= VOUCHING))
            : Optional.empty(),
        inspection);
  }

  private static List<String> keys(int version) {
    List<String> keys = new ArrayList<>(KEYS);
    if (version >= CHAINED) {
      keys.addAll(LinkFields.KEYS);
    }
    if (version >= VOUCHING) {
      keys.add(LinkFields.PAPERS);
    }
    return keys;
  }

  private static OffsetDateTime date(ObjectReader fields) {
    String typed = fields.text("date", DATE);
    try {
      return OffsetDateTime.parse(typed);
    } catch (DateTimeException e) {
      throw fields
          .spot()
          .fault("\"date\" is %s, which is not a moment. %s", PrintableText.quoted(typed), DATE);
    }
  }

  /** The text of a record that stands alone, first of its chain. */
  public static String write(InspectionRecord inspection) {
    return write(inspection, ChainLink.FIRST);
  }

  /**
   * The text of a record of the present version, the same again as was read. A record with an older
   * report would give another text; its stored bytes are what counts.
   */
  public static String write(InspectionRecord inspection, ChainLink link) {
    int version = link.papers().isPresent() ? VOUCHING : CHAINED;
    ObjectNode node = JsonText.object().put("format", Format.RECORD.text(version));
    LinkFields.write(node, link);
    node.put(
            "date",
            DateTimeFormatter.ISO_OFFSET_DATE_TIME
                .withLocale(Locale.ROOT)
                .format(inspection.date()))
        .put("by", inspection.by())
        .put("programVersion", inspection.programVersion());
    node.set("boat", BoatCodec.write(inspection.boat()));
    node.set(
        "report",
        ReportCodec.write(inspection.report(), new UnitFormat(inspection.boat().units())));
    return SealedText.seal(Layout.of(CanonicalNumbers.in(node)));
  }

  /** The fields of a record that hold its place in the chain. */
  private static final class LinkFields {
    static final List<String> KEYS = List.of("hash", "number", "previous", "corrects");

    /** The pages, since version 3. */
    static final String PAPERS = "papers";

    private static final String REMEDY = "Take the record as it was written.";
    private static final Pattern HASH = Pattern.compile("[0-9a-f]{64}");

    /** The ending of a file in the same folder; it cannot lead out of the folder. */
    private static final Pattern ENDING = Pattern.compile("(-[a-z]{1,20})?\\.[a-z]{1,5}");

    private LinkFields() {}

    /**
     * Reads the place.
     *
     * @param sealsPapers whether records of this version hold the hashes of their pages
     */
    static ChainLink read(ObjectReader record, boolean sealsPapers) {
      hash(record, "hash");
      int number = record.whole("number", BoatQuantity.COUNT, REMEDY);
      if (number < 1) {
        throw record.spot().fault("\"number\" is %d, wanted 1 or more. %s", number, REMEDY);
      }
      record.value("previous", REMEDY);
      return new ChainLink(
          number,
          record.hasValue("previous") ? Optional.of(hash(record, "previous")) : Optional.empty(),
          record
              .optionalObject("corrects", "number", "record", "hash", "because")
              .map(LinkFields::correction),
          sealsPapers ? Optional.of(papers(record)) : Optional.empty());
    }

    private static List<PaperHash> papers(ObjectReader record) {
      return record.items(PAPERS, "page", REMEDY, "ending", "hash").stream()
          .map(page -> new PaperHash(ending(page), hash(page, "hash")))
          .toList();
    }

    private static String ending(ObjectReader page) {
      String ending = page.text("ending", REMEDY);
      if (!ENDING.matcher(ending).matches()) {
        throw page.spot()
            .fault(
                "\"ending\" is %s, wanted one as in -card.pdf. %s",
                PrintableText.quoted(ending), REMEDY);
      }
      return ending;
    }

    private static Correction correction(ObjectReader corrects) {
      return new Correction(
          corrects.whole("number", BoatQuantity.COUNT, REMEDY),
          corrects.text("record", REMEDY),
          hash(corrects, "hash"),
          corrects.value("because", REMEDY).anyText());
    }

    private static String hash(ObjectReader fields, String key) {
      String text = fields.text(key, REMEDY);
      if (!HASH.matcher(text).matches()) {
        throw fields.spot().fault("\"%s\" is not a SHA-256 in hexadecimal digits. %s", key, REMEDY);
      }
      return text;
    }

    static void write(ObjectNode record, ChainLink link) {
      record.put("number", link.number());
      link.previous()
          .ifPresentOrElse(hash -> record.put("previous", hash), () -> record.putNull("previous"));
      link.corrects().ifPresent(correction -> record.set("corrects", tree(correction)));
      link.papers().ifPresent(papers -> write(record.putArray(PAPERS), papers));
    }

    private static void write(ArrayNode list, List<PaperHash> papers) {
      papers.forEach(p -> list.addObject().put("ending", p.ending()).put("hash", p.hash()));
    }

    private static ObjectNode tree(Correction correction) {
      return JsonText.object()
          .put("number", correction.number())
          .put("record", correction.record())
          .put("hash", correction.hash())
          .put("because", correction.reason());
    }
  }
}
