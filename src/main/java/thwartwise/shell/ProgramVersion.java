package thwartwise.shell;

import java.lang.module.ModuleDescriptor;
import java.util.Optional;

/** Which version of the program this is, as the jar's manifest says, or the module of the image. */
record ProgramVersion(String number) {

  /** Run from loose classes there is no manifest to ask. */
  static final ProgramVersion UNPACKAGED = new ProgramVersion("unpackaged");

  static ProgramVersion ofThisJar() {
    return Optional.ofNullable(ProgramVersion.class.getPackage().getImplementationVersion())
        .or(ProgramVersion::ofThisModule)
        .map(ProgramVersion::new)
        .orElse(UNPACKAGED);
  }

  private static Optional<String> ofThisModule() {
    return Optional.ofNullable(ProgramVersion.class.getModule().getDescriptor())
        .flatMap(ModuleDescriptor::rawVersion);
  }
}
