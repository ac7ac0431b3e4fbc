package thwartwise.shell;

import java.util.Optional;

/** Which version of the program this is, as the jar's manifest says. */
record ProgramVersion(String number) {

  /** Run from loose classes there is no manifest to ask. */
  static final ProgramVersion UNPACKAGED = new ProgramVersion("unpackaged");

  static ProgramVersion ofThisJar() {
    return Optional.ofNullable(ProgramVersion.class.getPackage().getImplementationVersion())
        .map(ProgramVersion::new)
        .orElse(UNPACKAGED);
  }
}
