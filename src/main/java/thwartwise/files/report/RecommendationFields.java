package thwartwise.files.report;

import java.util.List;
import thwartwise.crew.Recommendation;
import thwartwise.crew.Recommendation.QuestionMargin;
import thwartwise.json.Figures;
import thwartwise.json.ObjectReader;
import thwartwise.json.ValueReader;
import thwartwise.measured.BoatQuantity;

/** The recommendation, read back. */
final class RecommendationFields {
  private RecommendationFields() {}

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
            .map(RecommendationFields::crewLimit)
            .toList(),
        ReportValues.flag(fields, "withheld"),
        WordedListCodec.readRefusals(fields, "reasons"),
        margins(fields),
        fields.has("heldOnTo") && ReportValues.flag(fields, "heldOnTo"));
  }

  /** Records older than the margins have none. */
  private static List<QuestionMargin> margins(ObjectReader fields) {
    return fields.says("margins")
        ? ReportValues.list(fields, "margins", "margin").stream()
            .map(RecommendationFields::margin)
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
                .map(RecommendationFields::lighter)
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
