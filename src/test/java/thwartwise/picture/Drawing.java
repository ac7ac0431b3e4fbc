package thwartwise.picture;

import static thwartwise.Assertions.assertThat;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** A picture measured off again by the metre drawn in it. */
record Drawing(Document document) {

  static Drawing of(Picture picture) {
    try {
      return new Drawing(
          DocumentBuilderFactory.newDefaultNSInstance()
              .newDocumentBuilder()
              .parse(new InputSource(new StringReader(picture.svg()))));
    } catch (Exception e) {
      throw new AssertionError("not well formed: " + picture.svg(), e);
    }
  }

  List<Element> all(String element) {
    NodeList nodes = document.getElementsByTagNameNS("http://www.w3.org/2000/svg", element);
    List<Element> found = new ArrayList<>();
    for (int i = 0; i < nodes.getLength(); i++) {
      found.add((Element) nodes.item(i));
    }
    return found;
  }

  List<Element> kinds(String kind) {
    return all("*").stream().filter(e -> e.getAttribute("class").equals(kind)).toList();
  }

  Element kind(String kind) {
    assertThat(kinds(kind)).as(kind).hasSize(1);
    return kinds(kind).get(0);
  }

  String words(String kind) {
    return kind(kind).getTextContent().replace('\u00a0', ' ');
  }

  /** Every point of a path, units to the right and down. */
  static List<Point> points(Element path) {
    String[] numbers = path.getAttribute("d").replaceAll("[MLZ]", " ").strip().split("\\s+");
    List<Point> points = new ArrayList<>();
    for (int i = 0; i + 1 < numbers.length; i += 2) {
      points.add(new Point(Double.parseDouble(numbers[i]), Double.parseDouble(numbers[i + 1])));
    }
    return points;
  }

  List<Point> points(String kind) {
    return points(kind(kind));
  }

  Point middle(String kind) {
    return middle(kind(kind));
  }

  static Point middle(Element circle) {
    return new Point(
        Double.parseDouble(circle.getAttribute("cx")),
        Double.parseDouble(circle.getAttribute("cy")));
  }

  /** Units for a metre, from the bar drawn and the word beside it. */
  double perMetre() {
    List<Point> bar = points("metre-bar");
    double metres = Double.parseDouble(words("metre-word").replace(" m", ""));
    return (bar.get(1).x() - bar.get(0).x()) / metres;
  }

  double width() {
    return viewBox()[2];
  }

  double height() {
    return viewBox()[3];
  }

  private double[] viewBox() {
    return Arrays.stream(document.getDocumentElement().getAttribute("viewBox").split(" "))
        .mapToDouble(Double::parseDouble)
        .toArray();
  }

  static double least(List<Point> points, java.util.function.ToDoubleFunction<Point> of) {
    return points.stream().mapToDouble(of).min().orElseThrow();
  }

  static double most(List<Point> points, java.util.function.ToDoubleFunction<Point> of) {
    return points.stream().mapToDouble(of).max().orElseThrow();
  }
}
