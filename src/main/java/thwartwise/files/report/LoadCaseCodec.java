package thwartwise.files.report;

import java.util.Optional;
import thwartwise.boat.SeatPositions.Packing;
import thwartwise.boat.Side;
import thwartwise.json.Figures;
import thwartwise.json.JsonText;
import thwartwise.json.ObjectReader;
import thwartwise.json.WordChoice;
import thwartwise.loadcase.Crew;
import thwartwise.loadcase.LoadCase;
import thwartwise.loadcase.LoadCase.Kind;
import thwartwise.loadcase.LoadCaseStep;
import thwartwise.loadcase.LoadCaseStep.Act;
import thwartwise.measured.BoatQuantity;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** A load case without its words, written and read back; the keys name the units. */
final class LoadCaseCodec {
  private static final WordChoice<Kind> KINDS = WordChoice.of(Kind::name, Kind.values());
  private static final WordChoice<Packing> PACKINGS =
      WordChoice.of(Packing::name, Packing.values());
  private static final WordChoice<Side> SIDES = WordChoice.of(Side::name, Side.values());
  private static final WordChoice<Act> ACTS = WordChoice.of(Act::name, Act.values());

  private LoadCaseCodec() {}

  static ObjectNode write(LoadCase loadCase) {
    ObjectNode node = JsonText.object().put("kind", loadCase.kind().name());
    node.set("crew", write(loadCase.crew()));
    ArrayNode steps = JsonText.list();
    loadCase.deeds().forEach(step -> steps.add(write(step)));
    node.set("steps", steps);
    return node;
  }

  static LoadCase read(ObjectReader loadCase) {
    return new LoadCase(
        loadCase.oneOf("kind", KINDS, ReportValues.REMEDY),
        readCrew(loadCase.freeObject("crew", ReportValues.REMEDY)),
        ReportValues.list(loadCase, "steps", "step").stream()
            .map(LoadCaseCodec::readStep)
            .toList());
  }

  static Kind readKind(ObjectReader holder, String key) {
    return holder.oneOf(key, KINDS, ReportValues.REMEDY);
  }

  static ObjectNode write(Crew crew) {
    ObjectNode node = JsonText.object();
    if (crew instanceof Crew.Named named) {
      ArrayNode seats = JsonText.list();
      named
          .seats()
          .forEach(
              s -> seats.add(JsonText.object().put("person", s.person()).put("place", s.place())));
      node.set("named", seats);
    } else if (crew instanceof Crew.Alike alike) {
      node.put("people", alike.people());
      Figures.put(node, "eachKg", alike.eachKg());
      node.put("packing", alike.packing().name());
      node.set("places", JsonText.texts(alike.places()));
    } else if (crew instanceof Crew.Stated stated) {
      node.put("stated", stated.words());
    } else if (crew instanceof Crew.Nobody) {
      node.put("people", 0);
    }
    return node;
  }

  static Crew readCrew(ObjectReader crew) {
    if (crew.has("named")) {
      return new Crew.Named(
          ReportValues.list(crew, "named", "person").stream()
              .map(
                  s -> new Crew.Seat(ReportValues.text(s, "person"), ReportValues.text(s, "place")))
              .toList());
    }
    if (crew.has("places")) {
      return new Crew.Alike(
          crew.whole("people", BoatQuantity.COUNT, ReportValues.REMEDY),
          Figures.read(crew, "eachKg"),
          crew.value("places", ReportValues.REMEDY).texts(),
          crew.oneOf("packing", PACKINGS, ReportValues.REMEDY));
    }
    if (crew.has("stated")) {
      return new Crew.Stated(ReportValues.text(crew, "stated"));
    }
    return crew.has("people") ? new Crew.Nobody() : new Crew.NotStated();
  }

  private static ObjectNode write(LoadCaseStep step) {
    ObjectNode node = JsonText.object();
    if (step instanceof LoadCaseStep.Done done) {
      node.put("act", done.act().name()).put("who", done.who());
      return toward(node, done.side(), done.kitSlid());
    }
    if (step instanceof LoadCaseStep.OffTheMiddle off) {
      Figures.put(node, "offTheMiddleM", off.distanceM());
      return toward(node.put("stiff", off.stiff()), off.side(), off.kitSlid());
    }
    if (step instanceof LoadCaseStep.MovedInTime moved) {
      Figures.put(node, "seconds", moved.seconds());
      return toward(node.put("who", moved.who()), moved.side(), moved.kitSlid());
    }
    if (step instanceof LoadCaseStep.LinePull pull) {
      node.put("cleat", pull.cleat());
      Figures.put(node, "pullN", pull.pullN());
      Figures.put(node, "leastN", pull.leastN());
      Figures.put(node, "mostN", pull.mostN());
      Figures.put(node, "leverM", pull.leverM());
      Figures.put(node, "downDegrees", pull.downDegrees());
      return node;
    }
    if (step instanceof LoadCaseStep.WindPush wind) {
      Figures.put(node, "windMetresPerSecond", wind.speedMetresPerSecond());
      Figures.put(node, "pushN", wind.pushN());
      Figures.put(node, "leverM", wind.leverM());
      return toward(node, wind.side(), wind.kitSlid());
    }
    if (step instanceof LoadCaseStep.MotorPush motor) {
      Figures.put(node, "motorN", motor.pushN());
      Figures.put(node, "leverM", motor.leverM());
      return toward(node, motor.side(), false);
    }
    return node.put("stated", ((LoadCaseStep.Stated) step).words());
  }

  private static ObjectNode toward(ObjectNode node, Optional<Side> side, boolean kitSlid) {
    side.ifPresent(s -> node.put("side", s.name()));
    return kitSlid ? node.put("kitSlid", true) : node;
  }

  private static LoadCaseStep readStep(ObjectReader step) {
    Optional<Side> side =
        step.has("side")
            ? Optional.of(step.oneOf("side", SIDES, ReportValues.REMEDY))
            : Optional.empty();
    boolean kitSlid = step.has("kitSlid") && ReportValues.flag(step, "kitSlid");
    if (step.has("act")) {
      return new LoadCaseStep.Done(
          step.oneOf("act", ACTS, ReportValues.REMEDY), text(step, "who"), side, kitSlid);
    }
    if (step.has("offTheMiddleM")) {
      return new LoadCaseStep.OffTheMiddle(
          Figures.read(step, "offTheMiddleM"), ReportValues.flag(step, "stiff"), side, kitSlid);
    }
    if (step.has("seconds")) {
      return new LoadCaseStep.MovedInTime(
          text(step, "who"), Figures.read(step, "seconds"), side, kitSlid);
    }
    if (step.has("cleat")) {
      return new LoadCaseStep.LinePull(
          text(step, "cleat"),
          Figures.read(step, "pullN"),
          Figures.read(step, "leastN"),
          Figures.read(step, "mostN"),
          Figures.read(step, "leverM"),
          Figures.read(step, "downDegrees"));
    }
    if (step.has("windMetresPerSecond")) {
      return new LoadCaseStep.WindPush(
          Figures.read(step, "windMetresPerSecond"),
          Figures.read(step, "pushN"),
          Figures.read(step, "leverM"),
          side,
          kitSlid);
    }
    return step.has("motorN")
        ? new LoadCaseStep.MotorPush(
            Figures.read(step, "motorN"), Figures.read(step, "leverM"), side)
        : new LoadCaseStep.Stated(text(step, "stated"));
  }

  private static String text(ObjectReader fields, String key) {
    return ReportValues.text(fields, key);
  }
}
