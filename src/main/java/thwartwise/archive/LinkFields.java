package thwartwise.archive;

import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import thwartwise.json.JsonText;
import thwartwise.json.ObjectReader;
import thwartwise.measure.PrintableText;
import thwartwise.measured.BoatQuantity;
import thwartwise.record.ChainLink;
import thwartwise.record.Correction;
import thwartwise.record.PaperHash;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** The place of a record in its chain, among the keys of the record. */
final class LinkFields {
  static final List<String> KEYS = List.of("hash", "number", "previous", "corrects");

  /** Since version 3. */
  static final String PAPERS = "papers";

  private static final String REMEDY = "Take the record as it was written.";
  private static final Pattern HASH = Pattern.compile("[0-9a-f]{64}");

  /** A name of a file in the same folder and nothing that leads out of it. */
  private static final Pattern ENDING = Pattern.compile("(-[a-z]{1,20})?\\.[a-z]{1,5}");

  private LinkFields() {}

  /**
   * @param vouches whether records of this version hold the hashes of their pages
   */
  static ChainLink read(ObjectReader record, boolean vouches) {
    hash(record, "hash");
    int number = record.whole("number", BoatQuantity.COUNT, REMEDY);
    if (number < 1) {
      throw record.spot().fault("\"number\" is %d, wanted 1 or more. %s", number, REMEDY);
    }
    record.value("previous", REMEDY);
    return new ChainLink(
        number,
        record.says("previous") ? Optional.of(hash(record, "previous")) : Optional.empty(),
        record
            .optionalObject("corrects", "number", "record", "hash", "because")
            .map(LinkFields::correction),
        vouches ? Optional.of(papers(record)) : Optional.empty());
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
        .put("because", correction.because());
  }
}
