package thwartwise.files.report;

import java.util.List;
import thwartwise.checks.Margin;
import thwartwise.crew.Recommendation;
import thwartwise.crew.Recommendation.QuestionMargin;
import thwartwise.json.Figures;
import thwartwise.json.JsonText;
import thwartwise.json.ObjectReader;
import thwartwise.json.ValueReader;
import thwartwise.measure.UnitFormat;
import thwartwise.measured.BoatQuantity;
import tools.jackson.databind.node.ObjectNode;

/** The recommendation as a tree, and read back. */
final class RecommendationCodec {
  /** The caution wherever a number stands. */
  static final String CAUTION =
      "A recommendation, not a capacity plate and not a builder's plate. Local rules come first.";

  private RecommendationCodec() {}

  static ObjectNode write(Recommendation recommendation, UnitFormat words) {
    ObjectNode node = JsonText.object().put("people", recommendation.people());
    Figures.put(node, "crewKg", recommendation.crew());
    Figures.put(node, "loadKg", recommendation.load());
    Figures.put(node, "extraKg", recommendation.extra());
    Figures.put(node, "adultKg", recommendation.adult());
    node.put("staysUpWith", recommendation.staysUpWith())
        .put("holdsUpWhenSwamped", recommendation.holdsUpWhenSwamped())
        .put("ifClaimedChambersProve", recommendation.ifClaimsProven());
    QuestionCodec.write(node, "governedBy", recommendation.governedBy());
    WordedListCodec.putRefusals(node, "nextPersonBreaks", recommendation.nextPersonBreaks(), words);
    node.set(
        "excludedSeatings", ReportCodec.list(recommendation.excludedSeatings(), JsonText::texts));
    node.set(
        "crewLimits",
        ReportCodec.list(recommendation.crewLimits(), RecommendationCodec::crewLimit));
    node.put("withheld", recommendation.withheld()).put("caution", CAUTION);
    WordedListCodec.putRefusals(node, "reasons", recommendation.reasons(), words);
    node.set("margins", ReportCodec.list(recommendation.margins(), RecommendationCodec::margin));
    if (recommendation.heldOnTo()) {
      node.put("heldOnTo", true);
    }
    return node;
  }

  private static ObjectNode margin(QuestionMargin left) {
    Margin margin = left.margin();
    ObjectNode node = QuestionCodec.write(left.question());
    Figures.put(node, "value", margin.unit().shown(margin.value().orElse(Double.NaN)));
    Figures.put(node, "limit", margin.unit().shown(margin.limit()));
    node.put("atLeast", margin.atLeast()).put("unit", margin.unit().symbol());
    Figures.put(node, "shareOfLimit", margin.share());
    return node;
  }

  private static ObjectNode crewLimit(Recommendation.CrewLimit crew) {
    ObjectNode node = JsonText.object().put("people", crew.people());
    Figures.put(node, "eachUpToKg", crew.massLimit());
    // Records from before these figures are written again as they were.
    if (!Double.isNaN(crew.extraMass())) {
      Figures.put(node, "extraKg", crew.extraMass());
    }
    if (!crew.extraSeating().isEmpty()) {
      node.set("besidesLike", JsonText.texts(crew.extraSeating()));
    }
    node.set("excludedSeatings", ReportCodec.list(crew.excludedSeatings(), JsonText::texts));
    if (!crew.lighter().isEmpty()) {
      node.set("lighter", ReportCodec.list(crew.lighter(), RecommendationCodec::lighter));
    }
    return node;
  }

  private static ObjectNode lighter(Recommendation.Lighter seating) {
    ObjectNode node = JsonText.object();
    Figures.put(node, "eachUpToKg", seating.massLimit());
    node.set("places", JsonText.texts(seating.places()));
    return node;
  }

  static Recommendation read(ObjectReader report) {
    ObjectReader fields = report.freeObject("recommendation", ReportValues.REMEDY);
    return new Recommendation(
        count(fields, "people"),
        Figures.read(fields, "crewKg"),
        Figures.read(fields, "loadKg"),
        Figures.read(fields, "extraKg"),
        Figures.read(fields, "adultKg"),
        count(fields, "staysUpWith"),
        count(fields, "holdsUpWhenSwamped"),
        count(fields, "ifClaimedChambersProve"),
        QuestionCodec.readFactor(fields, "governedBy"),
        WordedListCodec.readRefusals(fields, "nextPersonBreaks"),
        seatings(fields),
        ReportValues.list(fields, "crewLimits", "crew limit").stream()
            .map(RecommendationCodec::crewLimit)
            .toList(),
        ReportValues.flag(fields, "withheld"),
        WordedListCodec.readRefusals(fields, "reasons"),
        margins(fields),
        fields.has("heldOnTo") && ReportValues.flag(fields, "heldOnTo"));
  }

  /** The margins; records older than margins have none. */
  private static List<QuestionMargin> margins(ObjectReader fields) {
    return fields.hasValue("margins")
        ? ReportValues.list(fields, "margins", "margin").stream()
            .map(RecommendationCodec::margin)
            .toList()
        : List.of();
  }

  private static QuestionMargin margin(ObjectReader margin) {
    return new QuestionMargin(QuestionCodec.read(margin), ReportValues.margin(margin, "value"));
  }

  private static Recommendation.CrewLimit crewLimit(ObjectReader crew) {
    return new Recommendation.CrewLimit(
        count(crew, "people"),
        Figures.read(crew, "eachUpToKg"),
        crew.has("extraKg") ? Figures.read(crew, "extraKg") : Double.NaN,
        crew.has("besidesLike")
            ? crew.value("besidesLike", ReportValues.REMEDY).texts()
            : List.of(),
        seatings(crew),
        crew.has("lighter")
            ? ReportValues.list(crew, "lighter", "seating").stream()
                .map(RecommendationCodec::lighter)
                .toList()
            : List.of());
  }

  private static Recommendation.Lighter lighter(ObjectReader seating) {
    return new Recommendation.Lighter(
        seating.value("places", ReportValues.REMEDY).texts(), Figures.read(seating, "eachUpToKg"));
  }

  private static List<List<String>> seatings(ObjectReader fields) {
    return fields.value("excludedSeatings", ReportValues.REMEDY).list().stream()
        .map(ValueReader::texts)
        .toList();
  }

  private static int count(ObjectReader fields, String key) {
    return fields.whole(key, BoatQuantity.COUNT, ReportValues.REMEDY);
  }
}
