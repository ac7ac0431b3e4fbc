package thwartwise.page;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.ErrorHandler;
import org.xml.sax.InputSource;
import org.xml.sax.SAXParseException;

/** A page read as XML, as strictly as that goes. */
public record ParsedPage(Document document) {

  public static ParsedPage of(String markup) {
    try {
      DocumentBuilder builder = DocumentBuilderFactory.newDefaultNSInstance().newDocumentBuilder();
      builder.setErrorHandler(new Strict());
      return new ParsedPage(builder.parse(new InputSource(new StringReader(markup))));
    } catch (Exception e) {
      throw new AssertionError("not well formed: " + e.getMessage() + "\n" + markup, e);
    }
  }

  public List<Element> all(String name) {
    NodeList nodes = document.getElementsByTagNameNS("*", name);
    List<Element> elements = new ArrayList<>();
    for (int i = 0; i < nodes.getLength(); i++) {
      elements.add((Element) nodes.item(i));
    }
    return elements;
  }

  /** What a reader sees of it, every stretch of blanks as one. */
  public String text() {
    return words(all("body").get(0));
  }

  public static String words(Element element) {
    return element.getTextContent().replaceAll("[\\s\u00a0]+", " ").strip();
  }

  private static final class Strict implements ErrorHandler {
    @Override
    public void warning(SAXParseException e) throws SAXParseException {
      throw e;
    }

    @Override
    public void error(SAXParseException e) throws SAXParseException {
      throw e;
    }

    @Override
    public void fatalError(SAXParseException e) throws SAXParseException {
      throw e;
    }
  }
}
