/**
 * The program and its libraries as one module, for the image only: a trimmed Java takes no jars that
 * are not modules. What the libraries could do beyond this (web, databases, management) is not used.
 */
open module thwartwise {
  requires java.desktop;
  requires java.logging;
  requires jdk.unsupported;
  requires jdk.xml.dom;

  uses org.apache.commons.logging.LogFactory;
}
